import type { LengthUnit } from './length.ts'
import { formatNumber, NO_VALUE } from './number.ts'

/** A board, panel or finish area: `1.94 m²` or `20.9 ft²`; `NO_VALUE` if not finite. */
export function formatArea(m2: number, unit: LengthUnit): string {
  if (!Number.isFinite(m2)) return NO_VALUE
  return unit === 'mm' ? `${formatNumber(m2, 2)} m²` : `${formatNumber(m2 / M2_PER_FT2, 1)} ft²`
}

/** The open area of an entrance or a vent, from m²: `60.0 cm²` or `9.3 in²`. */
export function formatEntranceArea(m2: number, unit: LengthUnit): string {
  if (!Number.isFinite(m2)) return NO_VALUE
  return unit === 'mm'
    ? `${formatNumber(m2 * CM2_PER_M2, 1)} cm²`
    : `${formatNumber(m2 / M2_PER_IN2, 1)} in²`
}

// Squares of 0.3048 m and 0.0254 m, exact (NIST SP 811, 2008, appendix B.8).
const M2_PER_FT2 = 0.09290304
const M2_PER_IN2 = 0.00064516
const CM2_PER_M2 = 10_000
