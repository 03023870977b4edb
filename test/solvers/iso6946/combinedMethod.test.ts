import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { computeCombinedResistance } from '../../../src/solvers/iso6946/combinedMethod.ts'
import type { Layer } from '../../../src/solvers/iso6946/paths.ts'

const films = { insideM2KPerW: 0.13, outsideM2KPerW: 0.04 }

const resistance = fc.double({ min: 0.001, max: 8, noNaN: true })
const taper = fc.oneof(fc.constant(0), fc.double({ min: 0.001, max: 4, noNaN: true }))
const weights = fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 1, maxLength: 3 })
const layer: fc.Arbitrary<Layer> = fc
  .record({
    weights: weights.filter((w) => w.some((x) => x > 0)),
    resistances: fc.tuple(resistance, resistance, resistance),
    tapers: fc.tuple(taper, taper, taper),
    pattern: fc.constantFrom('', 'rails', 'battens'),
  })
  .map(({ weights, resistances, tapers, pattern }) => {
    const total = weights.reduce((sum, w) => sum + w, 0)
    const sections = weights.map((w, i) => ({
      fraction: w / total,
      resistanceM2KPerW: resistances[i] ?? 1,
      taperM2KPerW: tapers[i] ?? 0,
    }))
    return pattern === '' ? { sections } : { sections, pattern }
  })
const layers = fc.array(layer, { minLength: 1, maxLength: 4 })

const bridged = (fraction: number, fill: number, bridge: number, pattern?: string): Layer => ({
  sections: [
    { fraction: 1 - fraction, resistanceM2KPerW: fill },
    { fraction, resistanceM2KPerW: bridge },
  ],
  ...(pattern !== undefined && { pattern }),
})

describe('computeCombinedResistance', () => {
  it('adds up plain layers and films, with no error', () => {
    const answer = computeCombinedResistance({
      ...films,
      layers: [0.5, 1.25].map((r) => ({ sections: [{ fraction: 1, resistanceM2KPerW: r }] })),
    })
    expect(answer.resistanceM2KPerW).toBeCloseTo(0.13 + 0.5 + 1.25 + 0.04, 12)
    expect(answer.relativeError).toBeCloseTo(0, 12)
  })

  it('is the films alone without layers', () => {
    const answer = computeCombinedResistance({ ...films, layers: [] })
    expect(answer.resistanceM2KPerW).toBeCloseTo(0.17, 12)
  })

  it('always has lower <= combined <= upper', () => {
    fc.assert(
      fc.property(layers, (some) => {
        const answer = computeCombinedResistance({ ...films, layers: some })
        const slack = 1e-8 * answer.upperM2KPerW
        expect(answer.lowerM2KPerW).toBeLessThanOrEqual(answer.resistanceM2KPerW + slack)
        expect(answer.resistanceM2KPerW).toBeLessThanOrEqual(answer.upperM2KPerW + slack)
      }),
    )
  })

  it('never resists less when one section resists more', () => {
    const extra = fc.double({ min: 0, max: 5, noNaN: true })
    fc.assert(
      fc.property(layers, fc.nat(3), fc.nat(2), extra, (some, atLayer, atSection, more) => {
        const thicker = some.map((l, i) => ({
          ...l,
          sections: l.sections.map((s, j) =>
            i === atLayer && j === atSection
              ? { ...s, resistanceM2KPerW: s.resistanceM2KPerW + more }
              : s,
          ),
        }))
        const before = computeCombinedResistance({ ...films, layers: some }).resistanceM2KPerW
        const after = computeCombinedResistance({ ...films, layers: thicker }).resistanceM2KPerW
        expect(after).toBeGreaterThanOrEqual(before * (1 - 1e-9))
      }),
    )
  })

  it('takes no notice of a bridge with no share, even one without resistance', () => {
    fc.assert(
      fc.property(resistance, fc.constantFrom(0, 0.2), (fill, bridge) => {
        const plain = bridged(0, fill, bridge)
        const answer = computeCombinedResistance({ ...films, layers: [plain] })
        expect(answer.resistanceM2KPerW).toBeCloseTo(fill + 0.17, 12)
      }),
    )
  })

  it('multiplies the fractions of layers that cross at random', () => {
    // Four paths by hand: .9 x .8, .9 x .2, .1 x .8, .1 x .2.
    const answer = computeCombinedResistance({
      ...films,
      layers: [bridged(0.1, 2, 0.5), bridged(0.2, 1, 0.3)],
    })
    const u = 0.72 / (2 + 1.17) + 0.18 / (2 + 0.47) + 0.08 / (0.5 + 1.17) + 0.02 / (0.5 + 0.47)
    expect(answer.upperM2KPerW).toBeCloseTo(1 / u, 12)
  })

  it('lays bridges of one pattern over each other, as far as they overlap', () => {
    // Three paths by hand: both filled .8, only the second bridged .1, both bridged .1.
    const answer = computeCombinedResistance({
      ...films,
      layers: [bridged(0.1, 2, 0.5, 'rails'), bridged(0.2, 1, 0.3, 'rails')],
    })
    const u = 0.8 / (2 + 1.17) + 0.1 / (2 + 0.47) + 0.1 / (0.5 + 0.47)
    expect(answer.upperM2KPerW).toBeCloseTo(1 / u, 12)
  })

  it('has the same lower bound whether bridges coincide or cross', () => {
    const lower = (pattern?: string) =>
      computeCombinedResistance({
        ...films,
        layers: [bridged(0.1, 2, 0.5, pattern), bridged(0.2, 1, 0.3, pattern)],
      }).lowerM2KPerW
    expect(lower('rails')).toBe(lower())
    // 1.8 and 0.2 sum by hand: layers are 1 / (.9/2 + .1/.5) and 1 / (.8/1 + .2/.3).
    expect(lower()).toBeCloseTo(0.17 + 1 / 0.65 + 1 / (0.8 + 2 / 3), 12)
  })

  it('tapers each path by itself', () => {
    const answer = computeCombinedResistance({
      ...films,
      layers: [
        {
          sections: [
            { fraction: 0.75, resistanceM2KPerW: 0.83, taperM2KPerW: 1 },
            { fraction: 0.25, resistanceM2KPerW: 0.33, taperM2KPerW: 0.5 },
          ],
        },
      ],
    })
    // With films the thin edges are 1 and 0.5, so both logarithms are ln 2.
    expect(answer.upperM2KPerW).toBeCloseTo(1 / (0.75 * Math.LN2 + 0.25 * 2 * Math.LN2), 12)
  })

  it('flags bounds that are more than 1.5 apart', () => {
    const ratio = (bridge: number) =>
      computeCombinedResistance({ ...films, layers: [bridged(0.1, 3, bridge), bridged(0, 1, 1)] })
    const mild = ratio(0.3)
    const strong = ratio(0.01)
    expect(mild.upperM2KPerW / mild.lowerM2KPerW).toBeLessThan(1.5)
    expect(mild.ratioAbove1_5).toBe(false)
    expect(strong.upperM2KPerW / strong.lowerM2KPerW).toBeGreaterThan(1.5)
    expect(strong.ratioAbove1_5).toBe(true)
    // (r - 1) / (r + 1) at r = 1.5.
    expect(strong.relativeError).toBeGreaterThan(0.2)
  })

  it.each([
    ['fractions that add up to 0.9', [{ fraction: 0.9, resistanceM2KPerW: 1 }]],
    ['no section', []],
    ['a negative resistance', [{ fraction: 1, resistanceM2KPerW: -1 }]],
    ['a negative taper', [{ fraction: 1, resistanceM2KPerW: 1, taperM2KPerW: -1 }]],
    ['a value that is not a number', [{ fraction: 1, resistanceM2KPerW: Number.NaN }]],
  ])('refuses %s', (_, sections) => {
    expect(() => computeCombinedResistance({ ...films, layers: [{ sections }] })).toThrow()
  })
})
