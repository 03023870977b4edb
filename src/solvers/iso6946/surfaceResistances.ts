/** Which way heat crosses a layer. Up to 30° from upright counts as horizontal. */
export type HeatFlow = 'up' | 'horizontal' | 'down'

/** The thin films of air on both faces of a panel, m²K/W. */
export interface SurfaceResistances {
  readonly insideM2KPerW: number
  readonly outsideM2KPerW: number
}

/**
 * Design values for plain faces, inside and outside, by direction of heat flow, m²K/W.
 * Source: ISO 6946:2007 Table 1 (from memory). Matt faces, wind of 4 m/s outside.
 */
export const SURFACE_RESISTANCES: Readonly<Record<HeatFlow, SurfaceResistances>> = {
  up: { insideM2KPerW: 0.1, outsideM2KPerW: 0.04 },
  horizontal: { insideM2KPerW: 0.13, outsideM2KPerW: 0.04 },
  down: { insideM2KPerW: 0.17, outsideM2KPerW: 0.04 },
}

/**
 * Heat carried by still room air along a face, W/(m²K).
 * Source: ISO 6946:2007 Annex A (from memory).
 */
export const STILL_AIR_CONVECTION: Readonly<Record<HeatFlow, number>> = {
  up: 5,
  horizontal: 2.5,
  down: 0.7,
}

export interface SurfaceFilm {
  /** Heat carried by moving air, W/(m²K). */
  readonly convectionWPerM2K: number
  /** 0 for a perfect mirror, 1 for a perfect black face; 0.9 for wood, paint and plaster. */
  readonly emissivity: number
  /** Mean temperature of the face and what it sees, °C. */
  readonly meanC: number
}

/**
 * The formula behind the table, m²K/W: 1 / (convection + emissivity x radiation). For faces that the
 * table doesn't cover, such as bright metal or another wind. Source: ISO 6946:2007 Annex A
 * (from memory).
 */
export const computeSurfaceResistance = (film: SurfaceFilm): number =>
  1 / (film.convectionWPerM2K + film.emissivity * computeBlackRadiation(film.meanC))

/** Heat carried by wind along an outside face, W/(m²K): 4 + 4v, v in m/s. Source: as above. */
export const computeWindConvection = (windMPerS: number): number => 4 + 4 * windMPerS

/**
 * Radiation between black faces near `meanC`, W/(m²K): 4 sigma T³, the slope of the fourth-power
 * law. Source: ISO 6946:2007 Annex A (from memory).
 */
export const computeBlackRadiation = (meanC: number): number =>
  4 * STEFAN_BOLTZMANN_W_PER_M2K4 * (meanC + ZERO_CELSIUS_K) ** 3

// CODATA 2018, to seven digits; the kelvin scale by definition.
const STEFAN_BOLTZMANN_W_PER_M2K4 = 5.670374e-8
const ZERO_CELSIUS_K = 273.15
