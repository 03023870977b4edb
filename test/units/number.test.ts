import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatNumber, formatTrimmed, NO_VALUE, parseNumber } from '../../src/units/number.ts'

describe('parseNumber', () => {
  it.each([
    ['418', 418],
    [' 418 ', 418],
    ['0', 0],
    ['007', 7],
    ['41.8', 41.8],
    ['41,8', 41.8],
    ['10,02', 10.02],
    ['.5', 0.5],
    [',5', 0.5],
    ['5.', 5],
    ['0,375', 0.375],
    ['1.234', 1.234],
    ['1234,567', 1234.567],
    ['12,3456', 12.3456],
    ['-3.5', -3.5],
    ['− 3,5', -3.5],
    ['+3.5', 3.5],
    ['1/2', 0.5],
    ['5/4', 1.25],
    ['1 / 2', 0.5],
    ['1 1/4', 1.25],
    ['1   1/4', 1.25],
    ['1-1/4', 1.25],
    ['1–1/4', 1.25],
    ['11/4', 2.75],
    ['16⁄32', 0.5],
    ['½', 0.5],
    ['16½', 16.5],
    ['16 ½', 16.5],
    ['16-½', 16.5],
    ['1⅞', 1.875],
    ['-16 1/2', -16.5],
    ['-½', -0.5],
    ['0 1/2', 0.5],
    ['0/5', 0],
  ])('reads %j as %d', (text, value) => {
    expect(parseNumber(text)).toMatchObject({ kind: 'ok', value })
  })

  it.each([
    ['1,234', '"1,234" can be read in two ways. Type 1.234 or 1234.'],
    ['-12,500', '"12,500" can be read in two ways. Type 12.500 or 12500.'],
    ['1,234.5', 'Leave out the mark between thousands. Type 1234.5 if that is what you mean.'],
    ['1.234,5', 'Leave out the mark between thousands. Type 1234.5 if that is what you mean.'],
    ['1.234,567', 'Leave out the mark between thousands. Type 1234.567 if that is what you mean.'],
    ['1,234,567', 'Leave out the mark between thousands. Type 1234567 if that is what you mean.'],
    ['1.234.567', 'Leave out the mark between thousands. Type 1234567 if that is what you mean.'],
    ['12 000', 'Leave out the mark between thousands. Type 12000 if that is what you mean.'],
    ['1,2,3', '"1,2,3" has too many points or commas. Type it as 1234.5.'],
    ['1.234.5', '"1.234.5" has too many points or commas. Type it as 1234.5.'],
    ['.', '"." has too many points or commas. Type it as 1234.5.'],
    ['1/0', 'The lower number of a fraction cannot be 0.'],
    ['16 1/0', 'The lower number of a fraction cannot be 0.'],
    ['16 0/0', 'The lower number of a fraction cannot be 0.'],
    ['1 5/4', 'After a whole number the fraction must be less than 1; 5/4 is not.'],
    ['1 4/4', 'After a whole number the fraction must be less than 1; 4/4 is not.'],
    [
      '16 - 1/2',
      'It is not clear what "-" means in "16 - 1/2". Type a fraction as 16 1/2 or 16-1/2.',
    ],
    [
      '16 -1/2',
      'It is not clear what "-" means in "16 -1/2". Type a fraction as 16 1/2 or 16-1/2.',
    ],
    ['16.5 1/2', 'Use decimals or a fraction, not both: 16.5 or 16 1/2, not "16.5 1/2".'],
    ['1.5½', 'Use decimals or a fraction, not both: 16.5 or 16 1/2, not "1.5½".'],
    ['', 'Type a number.'],
    ['-', 'Type a number.'],
    ['1234567890', 'That number has too many digits.'],
    ['9'.repeat(400), 'That number has too many digits.'],
    [`0.${'3'.repeat(400)}`, 'That number has too many digits.'],
    ['1/1234567', 'That number has too many digits.'],
  ])('refuses %j and says why', (text, message) => {
    expect(parseNumber(text)).toEqual({ kind: 'error', message })
  })

  it.each([
    '1e3',
    'Infinity',
    '∞',
    'NaN',
    '0x10',
    '1_000',
    '--5',
    '5-',
    '16-1',
    '1 2',
    '½6',
    '½½',
    '½/2',
    '1/2/3',
    '1/-2',
    '1/2 1/2',
    '16 1/2.5',
    '/2',
    '5/',
    '5%',
    '٣',
    NO_VALUE,
  ])('refuses %j', (text) => {
    expect(parseNumber(text).kind).toBe('error')
  })

  it('cuts a pasted page short in its message', () => {
    const parsed = parseNumber('page '.repeat(1000))
    expect(parsed.kind === 'error' && parsed.message.length).toBeLessThan(100)
  })

  it.each([
    ['16-2/4', '16 1/2'],
    ['5/4', '1 1/4'],
    ['41,80', '41.8'],
    ['-007', '-7'],
    ['-½', '-1/2'],
  ])('writes %j back as %j', (text, understood) => {
    expect(parseNumber(text)).toMatchObject({ understood })
  })

  it('gives plain zero for minus zero', () => {
    expect(parseNumber('-0')).toMatchObject({ value: 0, understood: '0' })
  })
})

describe('formatNumber', () => {
  it.each([
    [1.62, 2, '1.62'],
    [1.6, 2, '1.60'],
    [1.005, 2, '1.01'],
    [2.5, 0, '3'],
    [-2.5, 0, '-3'],
    [-0.04, 1, '0.0'],
    [-0, 0, '0'],
    [1e-7, 1, '0.0'],
    [1e-7, 7, '0.0000001'],
    [9.996, 2, '10.00'],
    [1234567.891, 1, '1234567.9'],
    [Number.NaN, 1, '–'],
    [Number.POSITIVE_INFINITY, 1, '–'],
  ])('writes %d to %d decimals as %j', (value, decimals, text) => {
    expect(formatNumber(value, decimals)).toBe(text)
  })

  it('reads back to within half of its last digit', () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true })
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 6 }), (number, decimals) => {
        const read = parseNumber(formatNumber(number, decimals))
        const error = read.kind === 'ok' ? Math.abs(read.value - number) : Number.NaN
        expect(error).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9)
      }),
      { seed: 1 },
    )
  })

  it('reads back exactly when the value has no more decimals than are shown', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1e9, max: 1e9 }),
        fc.integer({ min: 0, max: 6 }),
        (digits, decimals) => {
          const value = digits / 10 ** decimals
          expect(parseNumber(formatNumber(value, decimals))).toMatchObject({ value })
        },
      ),
      { seed: 2 },
    )
  })
})

describe('formatTrimmed', () => {
  it.each([
    [418, 1, '418'],
    [418.04, 1, '418'],
    [418.25, 1, '418.3'],
    [100, 0, '100'],
    [0.5, 3, '0.5'],
    [-0.01, 1, '0'],
    [Number.NaN, 1, '–'],
  ])('writes %d to at most %d decimals as %j', (value, mostDecimals, text) => {
    expect(formatTrimmed(value, mostDecimals)).toBe(text)
  })
})
