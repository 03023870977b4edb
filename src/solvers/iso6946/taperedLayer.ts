export interface TaperedPath {
  /** Everything but the taper, both surfaces included, m²K/W; above 0. */
  readonly uniformM2KPerW: number
  /** The tapered layer at its thick edge, m²K/W; 0 or more. At the thin edge it is 0. */
  readonly taperM2KPerW: number
}

/**
 * Mean transmittance of a rectangle with one layer that falls evenly from one edge to nothing at the
 * opposite edge, W/(m²K): (1/R1) ln(1 + R1/R0). It is the mean of 1/(R0 + t R1) for t from 0 to 1.
 * With no taper it is 1/R0. Throws if `uniformM2KPerW` isn't above 0 or the taper is below 0.
 * Source: ISO 6946:2007 Annex C, rectangular area (from memory); the annex is meant for slopes up to
 * 5 % (3 degrees). Steeper ones cost little: between two even planes at an angle a heat runs in arcs,
 * so straight paths overstate the taper by tan(a)/a - 1, 0.2 % at 4 degrees and 2.3 % at 15.
 */
export const computeTaperedTransmittance = (path: TaperedPath): number => {
  const { uniformM2KPerW, taperM2KPerW } = path
  if (!(uniformM2KPerW > 0 && taperM2KPerW >= 0)) {
    throw new Error(`computeTaperedTransmittance: ${JSON.stringify(path)}`)
  }
  if (taperM2KPerW === 0) return 1 / uniformM2KPerW
  // log1p keeps its digits when the taper is very small.
  return Math.log1p(taperM2KPerW / uniformM2KPerW) / taperM2KPerW
}
