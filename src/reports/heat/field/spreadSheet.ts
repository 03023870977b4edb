import { materialById } from '../../../catalog/materials.ts'

/** Conductors better than this are taken as metal, W/(m·K): wood and felts lie far below. */
export const METAL_W_PER_MK = 10

/**
 * A sheet made thicker than it is, with a conductivity that keeps what it does: a metal sheet carries as
 * much heat along itself, any other resists as much across.
 */
export const spreadSheet = (material: string, fromMm: number, thicknessMm: number) => {
  const { conductivityWPerMK } = materialById(material)
  const factor = thicknessMm / fromMm
  return {
    thicknessMm,
    conductivityWPerMK:
      conductivityWPerMK >= METAL_W_PER_MK
        ? conductivityWPerMK / factor
        : conductivityWPerMK * factor,
  }
}
