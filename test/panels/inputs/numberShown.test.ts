import { describe, expect, it } from 'vitest'
import {
  angle,
  count,
  length,
  mass,
  percent,
  resistance,
  temperature,
} from '../../../src/design/field.ts'
import {
  readNumber,
  showNumber,
  showRange,
  showWithUnit,
  splitUnit,
  stepOf,
  unitName,
} from '../../../src/panels/inputs/numberShown.ts'
import { INCH, METRIC } from '../../../src/units/preferences.ts'

const words = { label: 'Test', meaning: 'A test.' }
const gap = length({ ...words, min: 3, max: 20, step: 0.5, default: 8 })
const wide = length({ ...words, min: 100, max: 700, default: 483 })
const r = resistance({ ...words, min: 0.2, max: 8, default: 1.6 })
const kg = mass({ ...words, min: 0.3, max: 60, default: 20 })
const celsius = temperature({ ...words, min: -45, max: 30, default: -10 })
const frames = count({ ...words, min: 4, max: 200, default: 20 })
const slope = angle({ ...words, min: 1, max: 15, default: 4 })
const humidity = percent({ ...words, min: 10, max: 100, default: 84 })

describe('showNumber', () => {
  it('shows the figure without its unit, without zeros at the end', () => {
    expect(showNumber(gap, 9.5, METRIC)).toBe('9.5')
    expect(showNumber(gap, 12.7, INCH)).toBe('1/2')
    expect(showNumber(r, 1.6, METRIC)).toBe('1.6')
    expect(showNumber(kg, 20, METRIC)).toBe('20')
    expect(showNumber(celsius, -10, INCH)).toBe('14')
    expect(showNumber(frames, 20, INCH)).toBe('20')
    expect(showNumber(slope, 4, METRIC)).toBe('4')
    expect(showNumber(humidity, 84, METRIC)).toBe('84')
  })
})

describe('unitName', () => {
  it('names the unit of each quantity, and none for a count', () => {
    const fields = [gap, r, kg, celsius, frames, slope, humidity]
    expect(fields.map((field) => unitName(field, METRIC))).toEqual([
      'mm',
      'RSI',
      'kg',
      '°C',
      '',
      '°',
      '%',
    ])
    expect(fields.map((field) => unitName(field, INCH))).toEqual([
      'in',
      'R',
      'lb',
      '°F',
      '',
      '°',
      '%',
    ])
  })
})

describe('showRange', () => {
  it('puts the unit once, where it is read', () => {
    expect(showRange(gap, METRIC)).toBe('3 to 20 mm')
    expect(showRange(r, METRIC)).toBe('RSI 0.2 to 8')
    expect(showRange(frames, METRIC)).toBe('4 to 200')
  })
})

describe('readNumber', () => {
  const context = (stored: number, units = METRIC) => ({ stored, units })

  it('reads any unit of the quantity into the stored one', () => {
    expect(readNumber(wide, '16 1/2 in', context(483))).toMatchObject({ kind: 'ok', value: 419.1 })
    expect(readNumber(celsius, '14 F', context(0))).toMatchObject({ kind: 'ok', value: -10 })
    expect(readNumber(slope, '4.5°', context(4))).toMatchObject({ kind: 'ok', value: 4.5 })
    expect(readNumber(humidity, '80 %', context(84))).toMatchObject({ kind: 'ok', value: 80 })
  })

  it('gives back the stored number when the text stands as it was shown', () => {
    // 483 mm is shown as 19 1/32 in, which by itself would be 483.39375 mm.
    expect(showNumber(wide, 483, INCH)).toBe('19 1/32')
    expect(readNumber(wide, '19 1/32', context(483, INCH))).toMatchObject({ value: 483 })
    expect(readNumber(wide, '19 1/32 in', context(500, INCH))).toMatchObject({ value: 483.39375 })
  })

  it('says what is wrong with text that is no number', () => {
    expect(readNumber(frames, 'many', context(20)).kind).toBe('error')
  })
})

describe('stepOf', () => {
  it('is the field step in metric and a joiner fraction in inches', () => {
    expect(stepOf(gap, METRIC)).toBe(0.5)
    expect(stepOf(gap, INCH)).toBeCloseTo(25.4 / 32, 12)
    expect(stepOf(wide, INCH)).toBeCloseTo(25.4 / 16, 12)
  })

  it('is a round amount in the other US units', () => {
    expect(stepOf(celsius, INCH)).toBeCloseTo(5 / 9, 12)
    expect(stepOf(kg, INCH)).toBeCloseTo(0.45359237, 12)
    // R 0.5 is 0.5 / 5.678263 = 0.088055 m²K/W.
    expect(stepOf(r, INCH)).toBeCloseTo(0.088055, 5)
  })
})

describe('splitUnit', () => {
  it('parts figure and unit whichever stands first', () => {
    expect(splitUnit('RSI 1.62')).toEqual({ figure: '1.62', unit: 'RSI' })
    expect(splitUnit('45.2 kg')).toEqual({ figure: '45.2', unit: 'kg' })
    expect(splitUnit('-16 1/2 in')).toEqual({ figure: '-16 1/2', unit: 'in' })
    expect(splitUnit('–')).toEqual({ figure: '–', unit: '' })
  })
})

describe('showWithUnit', () => {
  it('keeps whole tens whole', () => {
    expect(showWithUnit(kg, 10, METRIC)).toBe('10 kg')
    expect(showWithUnit(wide, 100, METRIC)).toBe('100 mm')
  })
})
