import { describe, expect, it } from 'vitest'
import { heatColour, heatLevels, type Rgb } from '../../../../src/reports/heat/field/heatColours.ts'

type Triple = readonly [number, number, number]
type Matrix = readonly [Triple, Triple, Triple]

/** IEC 61966-2-1, backwards. */
const toLinear = ({ r, g, b }: Rgb): Triple =>
  [r, g, b].map((byte) => {
    const v = byte / 255
    return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4
  }) as unknown as Triple

/** CIE L* of linear sRGB: luminance by ITU-R BT.709, lightness by CIE 15. */
const lightness = ([r, g, b]: Triple): number => {
  const y = 0.2126 * r + 0.7152 * g + 0.0722 * b
  return y > 216 / 24389 ? 116 * Math.cbrt(y) - 16 : (24389 / 27) * y
}

const times = (m: Matrix, [r, g, b]: Triple): Triple =>
  m.map((row) => row[0] * r + row[1] * g + row[2] * b) as unknown as Triple

// What people see who lack one kind of cone, in linear sRGB. Red and green: Viénot, Brettel, Mollon
// 1999; blue: Brettel, Viénot, Mollon 1997, with its two half planes. The matrices as N. Burrus
// worked them out for sRGB (2021).
const PROTAN: Matrix = [
  [0.11238, 0.88762, 0],
  [0.11238, 0.88762, 0],
  [0.00401, -0.00401, 1],
]
const DEUTAN: Matrix = [
  [0.29275, 0.70725, 0],
  [0.29275, 0.70725, 0],
  [-0.02234, 0.02234, 1],
]
const TRITAN_NEAR: Matrix = [
  [1.01277, 0.13548, -0.14826],
  [-0.01243, 0.86812, 0.14431],
  [0.07589, 0.805, 0.11911],
]
const TRITAN_FAR: Matrix = [
  [0.93678, 0.18979, -0.12657],
  [0.06154, 0.81526, 0.1232],
  [-0.37562, 1.12767, 0.24796],
]
const seenBy = {
  'all cones': (c: Triple) => c,
  'no red cones': (c: Triple) => times(PROTAN, c),
  'no green cones': (c: Triple) => times(DEUTAN, c),
  'no blue cones': (c: Triple) =>
    times(0.03901 * c[0] - 0.02788 * c[1] - 0.01113 * c[2] >= 0 ? TRITAN_NEAR : TRITAN_FAR, c),
} as const

const scale = (steps: number): readonly Triple[] =>
  Array.from({ length: steps + 1 }, (_, i) => toLinear(heatColour(i / steps)))

describe('heatColour', () => {
  it('gets lighter all the way, so that it reads in grey', () => {
    const l = scale(100).map(lightness)
    for (let i = 1; i < l.length; i++) expect(l[i]).toBeGreaterThan(l[i - 1] ?? 0)
    // Wide enough for ten steps, and both ends off the black of ink and the white of paper.
    expect(l[0]).toBeGreaterThan(25)
    expect(l.at(-1)).toBeGreaterThan(90)
    expect(l.at(-1)).toBeLessThan(97)
  })

  it.each(Object.keys(seenBy) as (keyof typeof seenBy)[])(
    'keeps neighbouring tenths at least 4 L* apart for eyes with %s',
    (eyes) => {
      // About 1 L* is just noticeable side by side; 4 is plain to see.
      const l = scale(10).map((c) => lightness(seenBy[eyes](c)))
      for (let i = 1; i < l.length; i++) expect((l[i] ?? 0) - (l[i - 1] ?? 0)).toBeGreaterThan(4)
    },
  )

  it('is blue where it is cold and yellow where it is warm', () => {
    const [cold, warm] = [heatColour(0), heatColour(0.8)]
    expect(cold.b).toBeGreaterThan(cold.r + 40)
    expect(warm.r).toBeGreaterThan(warm.b + 80)
  })

  it('is clamped, and cold for what is not a number', () => {
    expect(heatColour(-3)).toEqual(heatColour(0))
    expect(heatColour(1.2)).toEqual(heatColour(1))
    expect(heatColour(Number.NaN)).toEqual(heatColour(0))
  })
})

describe('heatLevels', () => {
  const celsius = (outside: number, inside: number) =>
    heatLevels(outside, inside, 'c').map((l) => l.celsius)

  it('counts in fives between a frosty night and a warm colony, without the ends', () => {
    expect(heatLevels(-5, 30, 'c')).toEqual(
      [0, 5, 10, 15, 20, 25].map((c) => ({ celsius: c, share: (c + 5) / 35 })),
    )
  })

  it('takes closer or wider steps where fives would be too few or too many', () => {
    expect(celsius(9, 21)).toEqual([10, 12, 14, 16, 18, 20])
    expect(celsius(-35, 25)).toEqual([-30, -20, -10, 0, 10, 20])
    expect(celsius(18, 23)).toEqual([19, 20, 21, 22])
  })

  it('is round in Fahrenheit where that is shown', () => {
    // 23 °F to 86 °F.
    const shown = heatLevels(-5, 30, 'f').map((l) => (l.celsius * 9) / 5 + 32)
    expect(shown.map((f) => Math.round(f * 1e6) / 1e6)).toEqual([30, 40, 50, 60, 70, 80])
  })

  it('keeps the shares right when it is warmer outside', () => {
    const levels = heatLevels(42, 22, 'c')
    expect(levels.map((l) => l.celsius)).toEqual([25, 30, 35, 40])
    // 25 °C is 17 of 20 K from the 42 °C outside.
    expect(levels[0]?.share).toBeCloseTo(0.85, 12)
  })

  it('counts in tenths over the little that an outer skin warms up', () => {
    const tenths = (outside: number, inside: number) =>
      celsius(outside, inside).map((c) => Math.round(c * 1e6) / 1e6)
    expect(tenths(-10, -9.5)).toEqual([-9.9, -9.8, -9.7, -9.6])
    expect(tenths(-10, -8.8)).toEqual([-9.8, -9.6, -9.4, -9.2, -9])
    expect(tenths(-10, -7)).toEqual([-9.5, -9, -8.5, -8, -7.5])
  })

  it('has 4 to 9 lines from half a kelvin to 400, or misses by one where no step fits', () => {
    for (let span = 0.5; span < 400; span *= 1.05) {
      for (const outside of [-40, -7.3, 0, 11]) {
        for (const unit of ['c', 'f'] as const) {
          const { length } = heatLevels(outside, outside + span, unit)
          expect(length).toBeGreaterThanOrEqual(3)
          expect(length).toBeLessThanOrEqual(10)
        }
      }
    }
  })

  it('has none without a difference', () => {
    expect(heatLevels(20, 20, 'c')).toEqual([])
    expect(heatLevels(Number.NaN, 20, 'c')).toEqual([])
  })
})
