import { describe, expect, it } from 'vitest'
import {
  fieldStage,
  resistanceTogether,
  savedWords,
  sumOfPanels,
  timesWords,
  wholePercents,
} from '../../../../src/panels/answers/warmth/fieldWords.ts'
import type { FieldView } from '../../../../src/panels/answers/warmth/useFieldView.ts'
import { celsiusAt, nightLossW } from '../../../../src/panels/night.ts'
import type { HeatFieldAnswer } from '../../../../src/reports/heat/field/heatFieldAnswer.ts'
import { answersFor } from '../../../../src/store/answers.ts'
import { useDesignStore } from '../../../../src/store/designStore.ts'

const NIGHT = { outsideC: -5, insideC: 35 }

const ANSWER: HeatFieldAnswer = {
  quality: 'preview',
  conductanceWPerK: 1.23,
  lowerWPerK: 1.22,
  upperWPerK: 1.25,
  panels: [],
  shares: [],
  edges: [],
  coldest: { fRsi: 0.5, pointMm: [0, 0, 0], partId: undefined, place: '' },
  warmestOutsideShare: 0,
  slopeStepError: 0,
  leftOut: [],
  grid: {
    xM: new Float64Array(),
    yM: new Float64Array(),
    zM: new Float64Array(),
    temperatureC: new Float32Array(),
  },
  unknowns: 0,
  iterations: 0,
  hasConverged: true,
}

describe('fieldStage', () => {
  const view = (change: Partial<FieldView>): FieldView => ({
    answer: undefined,
    isOld: false,
    isWorking: false,
    problem: undefined,
    ...change,
  })

  it('is the quality of an answer about the present design', () => {
    expect(fieldStage(view({ answer: ANSWER }))).toBe('preview')
    expect(fieldStage(view({ answer: { ...ANSWER, quality: 'full' } }))).toBe('full')
    // A finer answer may be under way.
    expect(fieldStage(view({ answer: ANSWER, isWorking: true }))).toBe('preview')
  })

  it('is working while there is none, or only an older one', () => {
    expect(fieldStage(view({}))).toBe('working')
    expect(fieldStage(view({ answer: ANSWER, isOld: true }))).toBe('working')
  })

  it('is no answer when something is in the way', () => {
    expect(fieldStage(view({ problem: 'Too fine.' }))).toBe('none')
    expect(fieldStage(view({ answer: ANSWER, isOld: true, problem: 'Too fine.' }))).toBe('none')
  })
})

describe('sumOfPanels', () => {
  it('is what the report says as long as no field is in it', () => {
    const heat = answersFor(useDesignStore.getState().design).answer?.report.heat
    if (heat === undefined) throw new Error('the default hive must be built')
    expect(heat.method).toBe('panel-sum')
    expect(sumOfPanels(heat)).toBeCloseTo(heat.conductanceWPerK, 12)
  })
})

describe('savedWords', () => {
  it('says what is saved or spent, for each degree and on the cold night', () => {
    // 40 K: 0.05 W/K is 2 W.
    expect(savedWords(0.05, NIGHT, 'rsi')).toBe('Saves 0.050 W/K, 2 W on the cold night')
    expect(savedWords(-0.15, NIGHT, 'rsi')).toBe('Costs 0.15 W/K, 6 W on the cold night')
    expect(savedWords(0.0001, NIGHT, 'rsi')).toBe('Changes next to nothing')
  })
})

describe('timesWords', () => {
  it.each([
    [3.69, 1.23, 'Loses 3 times as much as this hive.'],
    [1.5, 1.2, 'Loses 25 % more than this hive.'],
    [0.6, 1.2, 'Loses 50 % less than this hive.'],
    [1.21, 1.2, 'Loses as much as this hive.'],
    [1.2, 0, ''],
  ])('%d beside %d', (other, own, words) => {
    expect(timesWords(other, own)).toBe(words)
  })
})

describe('wholePercents', () => {
  it('adds up to 100 where plain rounding would not', () => {
    expect(wholePercents([1 / 3, 1 / 3, 1 / 3])).toEqual([34, 33, 33])
    expect(wholePercents([0.155, 0.155, 0.69])).toEqual([16, 15, 69])
    expect(wholePercents([0.25, 0.75])).toEqual([25, 75])
  })
})

describe('resistanceTogether', () => {
  it('adds areas and heat', () => {
    // 1 m² of R 1 loses 1 W/K, 2 m² of R 4 lose 0.5 W/K: 3 m² for 1.5 W/K.
    const panels = [
      { conductanceWPerK: 1, resistanceM2KPerW: 1 },
      { conductanceWPerK: 0.5, resistanceM2KPerW: 4 },
    ]
    expect(resistanceTogether(panels)).toBeCloseTo(2, 12)
    expect(resistanceTogether([])).toBeUndefined()
  })
})

describe('the cold night', () => {
  it('turns shares into temperatures and conductance into heat', () => {
    expect(celsiusAt(0, NIGHT)).toBe(-5)
    expect(celsiusAt(0.25, NIGHT)).toBe(5)
    expect(nightLossW(1.5, NIGHT)).toBe(60)
    expect(nightLossW(1.5, { outsideC: 40, insideC: 35 })).toBe(0)
  })
})
