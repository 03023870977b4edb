import { derivePaths, type Layer, type Section } from './paths.ts'
import type { SurfaceResistances } from './surfaceResistances.ts'
import { computeTaperedTransmittance } from './taperedLayer.ts'

/** A flat panel: its surface films and its layers from inside to outside. */
export interface Assembly extends SurfaceResistances {
  readonly layers: readonly Layer[]
}

/** Surface to surface through everything, films included. */
export interface CombinedResistance {
  /** Heat goes straight through, never sideways: the most that the panel can resist, m²K/W. */
  readonly upperM2KPerW: number
  /** Heat spreads freely within each layer: the least that it can resist, m²K/W. */
  readonly lowerM2KPerW: number
  /** The answer: the mean of the two bounds, m²K/W. */
  readonly resistanceM2KPerW: number
  readonly transmittanceWPerM2K: number
  /** The most that the answer can be wrong: (upper - lower) / (2 x resistance), 0 to 1. */
  readonly relativeError: number
  /** The bounds are so far apart that the standard doesn't allow this method. */
  readonly ratioAbove1_5: boolean
}

/**
 * Resistance of a panel with timber or other bridges in it, by the combined method. It isn't meant
 * for metal that bridges the insulation. Throws if a layer's fractions don't add up to 1, a value is
 * negative, or the whole has no resistance. Time grows with the product of the section counts.
 * Source: ISO 6946:2007 6.2 (2017: 6.7.2), from memory.
 */
export const computeCombinedResistance = (assembly: Assembly): CombinedResistance => {
  const upperM2KPerW = computeUpper(assembly)
  const lowerM2KPerW = computeLower(assembly)
  const resistanceM2KPerW = (upperM2KPerW + lowerM2KPerW) / 2
  return {
    upperM2KPerW,
    lowerM2KPerW,
    resistanceM2KPerW,
    transmittanceWPerM2K: 1 / resistanceM2KPerW,
    relativeError: (upperM2KPerW - lowerM2KPerW) / (2 * resistanceM2KPerW),
    ratioAbove1_5: upperM2KPerW / lowerM2KPerW > 1.5,
  }
}

/** Every straight path from air to air, side by side: 1 / sum of fraction x transmittance. */
const computeUpper = ({ insideM2KPerW, outsideM2KPerW, layers }: Assembly): number => {
  const transmittance = derivePaths(layers).map(
    ({ fraction, resistanceM2KPerW, taperM2KPerW }) =>
      fraction *
      computeTaperedTransmittance({
        uniformM2KPerW: insideM2KPerW + resistanceM2KPerW + outsideM2KPerW,
        taperM2KPerW,
      }),
  )
  return 1 / sum(transmittance)
}

/** Each layer made even by itself, then all in a row; patterns don't matter here. */
const computeLower = ({ insideM2KPerW, outsideM2KPerW, layers }: Assembly): number => {
  const even = layers.map(({ sections }) => sections.filter((s) => s.fraction > 0))
  const resistances = even.map((sections) => blend(sections, (s) => s.resistanceM2KPerW))
  const tapers = even.map((sections) => blend(sections, (s) => s.taperM2KPerW ?? 0))
  return (
    1 /
    computeTaperedTransmittance({
      uniformM2KPerW: insideM2KPerW + sum(resistances) + outsideM2KPerW,
      taperM2KPerW: sum(tapers),
    })
  )
}

/** Side-by-side resistances as one. A section without resistance short-circuits the layer. */
const blend = (sections: readonly Section[], resistance: (section: Section) => number): number =>
  1 / sum(sections.map((s) => s.fraction / resistance(s)))

const sum = (values: readonly number[]): number => values.reduce((total, v) => total + v, 0)
