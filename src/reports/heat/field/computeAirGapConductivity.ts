import { type AirLayer, computeAirLayerResistance } from '../../../solvers/iso6946/airLayers.ts'

/**
 * What a solid in place of closed still air has to conduct to let the same heat through, W/(m·K):
 * thickness over resistance. Source: ISO 10211:2007 5.2 (from memory), air layers after ISO 6946.
 */
export const computeAirGapConductivity = (thicknessMm: number, flow: AirLayer['flow']): number => {
  const thicknessM = thicknessMm / 1000
  return thicknessM / computeAirLayerResistance({ thicknessM, flow })
}
