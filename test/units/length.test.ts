import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { formatLength, type LengthUnit, lengthStepMm, parseLength } from '../../src/units/length.ts'

function readMm(text: string, unit: LengthUnit): number {
  const parsed = parseLength(text, unit)
  return parsed.kind === 'ok' ? parsed.mm : Number.NaN
}

describe('parseLength', () => {
  // 25.4 mm to the inch, 304.8 mm to the foot.
  it.each([
    ['418', 'mm', 418],
    ['418', 'in', 10617.2],
    ['  418  ', 'mm', 418],
    ['418 mm', 'in', 418],
    ['418mm', 'in', 418],
    ['418 MM', 'in', 418],
    ['41.8 cm', 'mm', 418],
    ['41,8 cm', 'mm', 418],
    ['41,8 cm', 'in', 418],
    ['10,02', 'mm', 10.02],
    ['1.2 m', 'mm', 1200],
    ['1 m', 'in', 1000],
    ['1234.5', 'mm', 1234.5],
    ['-3', 'mm', -3],
    ['−3,5 mm', 'in', -3.5],
    ['-0', 'mm', 0],
    ['0', 'in', 0],
    ['16 1/2', 'in', 419.1],
    ['16 1/2', 'mm', 16.5],
    ['16-1/2"', 'mm', 419.1],
    ['16 1/2"', 'mm', 419.1],
    ['16 1/2″', 'mm', 419.1],
    ['16 1/2”', 'mm', 419.1],
    ["16 1/2''", 'mm', 419.1],
    ['16 1/2 in', 'mm', 419.1],
    ['16 1/2in.', 'mm', 419.1],
    ['16 1/2 inch', 'mm', 419.1],
    ['16 1/2 inches', 'mm', 419.1],
    ['16½', 'in', 419.1],
    ['16 ½ in', 'mm', 419.1],
    ['16.5 in', 'mm', 419.1],
    ['16,5"', 'mm', 419.1],
    ['½', 'in', 12.7],
    ['½ in', 'mm', 12.7],
    ['1/32 in', 'mm', 0.79375],
    ['1 1/4', 'in', 31.75],
    ['11/4', 'in', 69.85],
    ['-16 1/2', 'in', -419.1],
    ['-16-1/2"', 'mm', -419.1],
    ['1\' 4 1/2"', 'mm', 419.1],
    ['1\'4 1/2"', 'in', 419.1],
    ['1\'-4 1/2"', 'in', 419.1],
    ['1\' - 4-1/2"', 'in', 419.1],
    ['1′ 4½″', 'mm', 419.1],
    ["1' 4 1/2", 'in', 419.1],
    ["1' 4 1/2", 'mm', 419.1],
    ['1 ft 4 1/2 in', 'mm', 419.1],
    ['1ft. 4 1/2in.', 'mm', 419.1],
    ['1 foot 4.5 inches', 'mm', 419.1],
    ['-1\' 4 1/2"', 'mm', -419.1],
    ['1\' 1/2"', 'mm', 317.5],
    ['0\' 6"', 'mm', 152.4],
    ['2 ft', 'mm', 609.6],
    ['2 feet', 'in', 609.6],
    ["1 1/2'", 'mm', 457.2],
  ] as const)('reads %j in %s as %d mm', (text, unit, mm) => {
    expect(readMm(text, unit)).toBe(mm)
  })

  it.each([
    ['418', 'mm', '418 mm'],
    ['41,8 cm', 'mm', '41.8 cm (418 mm)'],
    ['41,8 cm', 'in', '41.8 cm (about 16 15/32 in, 418 mm)'],
    ['418 mm', 'in', '418 mm (about 16 15/32 in)'],
    ['418.123 mm', 'mm', '418.123 mm'],
    ['16 1/2', 'in', '16 1/2 in (419.1 mm)'],
    ['16-2/4"', 'mm', '16 1/2 in (419.1 mm)'],
    ['16.5', 'in', '16.5 in (16 1/2 in, 419.1 mm)'],
    ['1/3', 'in', '1/3 in (about 11/32 in, 8.47 mm)'],
    ['1\' 4 1/2"', 'mm', '1 ft 4 1/2 in (419.1 mm)'],
    ['-1\' 4 1/2"', 'in', '-1 ft 4 1/2 in (-16 1/2 in, -419.1 mm)'],
  ] as const)('says what it understood by %j in %s', (text, unit, understood) => {
    expect(parseLength(text, unit)).toMatchObject({ kind: 'ok', understood })
  })

  const advice = 'Type it as 418 mm, 41.8 cm, 16 1/2 in or 1\' 4 1/2".'
  it.each([
    ['', 'Type a length, such as 418 mm, 41.8 cm, 16 1/2 in or 1\' 4 1/2".'],
    ['   ', 'Type a length, such as 418 mm, 41.8 cm, 16 1/2 in or 1\' 4 1/2".'],
    ['1,234 mm', '"1,234" can be read in two ways. Type 1.234 or 1234.'],
    ['1,234.5', 'Leave out the mark between thousands. Type 1234.5 if that is what you mean.'],
    ['16 1/0 in', 'The lower number of a fraction cannot be 0.'],
    ['abc', `Start with a number. ${advice}`],
    ['mm', `Start with a number. ${advice}`],
    ['-', `Start with a number. ${advice}`],
    ['Infinity', `Start with a number. ${advice}`],
    ['--5', `"-5" has a sign too many. ${advice}`],
    ['5 px', `"px" is not a unit used here. ${advice}`],
    ['1e3', `"e" is not a unit used here. ${advice}`],
    ['5 constructor', `"constructor" is not a unit used here. ${advice}`],
    ['5 mm cm', `Give one unit only. ${advice}`],
    ['16 1/2" mm', `Give one unit only. ${advice}`],
    ['16 in 5 mm', `Give a length in one unit. ${advice}`],
    ['4" 1\'', `Give a length in one unit. ${advice}`],
    ['1 m 20 cm', `Give a length in one unit. ${advice}`],
    ["1' 2' 3\"", `Give a length in one unit. ${advice}`],
    ['16" 1/2', `Give a length in one unit. ${advice}`],
    ['1.5\' 3"', 'With ft and in, give whole ft and less than 12 in.'],
    ['1\' 12"', 'With ft and in, give whole ft and less than 12 in.'],
    ["1'234", 'With ft and in, give whole ft and less than 12 in.'],
    ['9'.repeat(400), 'That number has too many digits.'],
  ])('refuses %j and says why', (text, message) => {
    expect(parseLength(text, 'in')).toEqual({ kind: 'error', message })
  })

  it.each(['∞ mm', 'NaN', '5 mm²', '5 %', '1/2/3 in', '½6"', '4 18 mm', '4 in -', '1\' --4"'])(
    'refuses %j',
    (text) => {
      expect(parseLength(text, 'mm').kind).toBe('error')
    },
  )

  it('never throws and never gives a number that is not finite', () => {
    const piece = fc.constantFrom(
      ...['0', '1', '16', '418', '1/2', '½', '/', '.', ',', '-', '+', ' ', "'", '"', 'mm', 'cm'],
      ...['m', 'in', 'ft', 'e', '∞', '0/0', '999999999', 'R', '°'],
    )
    const text = fc.array(piece, { maxLength: 8 }).map((pieces) => pieces.join(''))
    fc.assert(
      fc.property(fc.oneof(text, fc.string()), fc.constantFrom('mm', 'in'), (typed, unit) => {
        const parsed = parseLength(typed, unit)
        if (parsed.kind === 'ok') expect(parsed.mm).toSatisfy(Number.isFinite)
        else expect(parsed.message).toMatch(/\.$/)
      }),
      { seed: 3, numRuns: 1000 },
    )
  })

  it('takes a whole number of inches and a fraction as exactly 25.4 times their sum', () => {
    const whole = fc.integer({ min: 0, max: 200 })
    const part = fc.constantFrom(2, 4, 8, 16, 32, 64).chain((denominator) =>
      fc.record({
        denominator: fc.constant(denominator),
        numerator: fc.integer({ min: 1, max: denominator - 1 }),
      }),
    )
    fc.assert(
      fc.property(whole, part, (inches, { numerator, denominator }) => {
        // 254 * (whole * den + num) / (10 * den): whole numbers, then one division.
        const mm = (254 * (inches * denominator + numerator)) / (10 * denominator)
        expect(readMm(`${inches} ${numerator}/${denominator}`, 'in')).toBe(mm)
        expect(readMm(`${inches}-${numerator}/${denominator}"`, 'mm')).toBe(mm)
      }),
      { seed: 4 },
    )
  })
})

describe('formatLength', () => {
  it.each([
    [418, '418'],
    [418.04, '418'],
    [418.05, '418.1'],
    [9.5, '9.5'],
    [-3.25, '-3.3'],
    [-0.04, '0'],
    [0, '0'],
  ])('shows %d mm as %j in millimetres', (mm, text) => {
    expect(formatLength(mm, 'mm')).toBe(text)
  })

  it.each([
    [419.1, '16 1/2'],
    [418, '16 15/32'],
    [406.4, '16'],
    // 15 31.9/32 in: carries into the whole number.
    [(25.4 * (15 * 32 + 31.9)) / 32, '16'],
    [12.7, '1/2'],
    [0.79375, '1/32'],
    [-419.1, '-16 1/2'],
    [-19.05, '-3/4'],
    [-0.1, '0'],
    [0, '0'],
    // 4 ft stays in inches.
    [1219.2, '48'],
    // Exact halves of 1/32 go away from zero.
    [0.396875, '1/32'],
    [-0.396875, '-1/32'],
    // 3/64 in as arithmetic leaves it, a bit under the half.
    [1.1906249999999998, '1/16'],
  ])('shows %d mm as %j in inches', (mm, text) => {
    expect(formatLength(mm, 'in')).toBe(text)
  })

  it('takes a finer or coarser fraction, more decimals, and the unit', () => {
    expect(formatLength(0.396875, 'in', { denominator: 64 })).toBe('1/64')
    expect(formatLength(2.38125, 'in', { denominator: 16 })).toBe('1/8')
    expect(formatLength(407.19375, 'mm', { decimals: 2 })).toBe('407.19')
    expect(formatLength(419.1, 'in', { withUnit: true })).toBe('16 1/2 in')
    expect(formatLength(419.1, 'mm', { withUnit: true })).toBe('419.1 mm')
  })

  it('shows a dash for what is not a size', () => {
    expect(formatLength(Number.NaN, 'mm', { withUnit: true })).toBe('–')
    expect(formatLength(Number.POSITIVE_INFINITY, 'in')).toBe('–')
  })

  const lengthMm = fc.double({ min: -5000, max: 5000, noNaN: true })

  it('in mm reads back as exactly the decimals shown', () => {
    fc.assert(
      fc.property(lengthMm, fc.integer({ min: 0, max: 4 }), (mm, decimals) => {
        const text = formatLength(mm, 'mm', { decimals })
        expect(readMm(text, 'mm')).toBe(Number(text))
        expect(Math.abs(Number(text) - mm)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9)
      }),
      { seed: 5 },
    )
  })

  it('in inches reads back to within half of 1/32', () => {
    fc.assert(
      fc.property(lengthMm, (mm) => {
        const error = Math.abs(readMm(formatLength(mm, 'in'), 'in') - mm)
        expect(error).toBeLessThanOrEqual(25.4 / 64 + 1e-6)
      }),
      { seed: 6 },
    )
  })

  it.each([16, 32, 64] as const)('keeps every 1/%d in exactly, with and without unit', (parts) => {
    for (let count = -3 * parts; count <= 60 * parts; count += 1) {
      const mm = (254 * count) / (10 * parts) + 0
      const text = formatLength(mm, 'in', { denominator: parts })
      expect(readMm(text, 'in')).toBe(mm)
      expect(readMm(formatLength(mm, 'in', { denominator: parts, withUnit: true }), 'mm')).toBe(mm)
    }
  })
})

describe('lengthStepMm', () => {
  it('is a millimetre, or a sixteenth of an inch', () => {
    expect(lengthStepMm('mm')).toBe(1)
    expect(lengthStepMm('in')).toBe(readMm('1/16', 'in'))
  })
})
