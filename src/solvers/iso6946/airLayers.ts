import { computeBlackRadiation, type HeatFlow } from './surfaceResistances.ts'

export interface AirLayer {
  /** Across the heat flow, m. */
  readonly thicknessM: number
  readonly flow: HeatFlow
}

/**
 * Resistance of a closed layer of still air between two matt faces near 10 °C, m²K/W; 0 for no
 * thickness. Meant for layers up to 0.3 m; a thicker one gets nearly the value at 0.3 m. Holds while
 * the two faces differ by 5 K or less; for a greater difference it is a little too high.
 * Source: ISO 6946:2007 5.3.2, Table 2 and Annex B (from memory).
 */
export const computeAirLayerResistance = ({ thicknessM, flow }: AirLayer): number => {
  const conduction = STILL_AIR_W_PER_MK / thicknessM
  // A thin layer only conducts; in a thick one the air turns over and carries heat instead.
  const still = Math.max(conduction, CONVECTION_W_PER_M2K[flow](thicknessM))
  return 1 / (still + MATT_EXCHANGE * computeBlackRadiation(MEAN_C))
}

// Annex B, Table B.1: what turning air carries when the faces differ by at most 5 K. Downward flow
// leaves the air in layers, so it carries little, and less the thicker the layer.
const CONVECTION_W_PER_M2K: Readonly<Record<HeatFlow, (thicknessM: number) => number>> = {
  up: () => 1.95,
  horizontal: () => 1.25,
  down: (thicknessM) => 0.12 * thicknessM ** -0.44,
}

const STILL_AIR_W_PER_MK = 0.025
const MEAN_C = 10

// Two wide parallel faces of emissivity 0.9: 1 / (1/e1 + 1/e2 - 1).
const MATT_EXCHANGE = 1 / (1 / 0.9 + 1 / 0.9 - 1)
