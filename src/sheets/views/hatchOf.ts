import { materialById } from '../../catalog/materials.ts'
import type { HatchKind, Tint } from '../drawing.ts'
import type { Bounds2 } from './polygon2.ts'

export interface CutLook {
  readonly hatch: HatchKind
  readonly tint: Tint
}

export interface HatchOptions {
  /** The other diagonal, for a neighbour of the same material. */
  readonly isTurned: boolean
  /** Too narrow on the paper for lines of its own. */
  readonly isNarrow: boolean
}

/**
 * How a cut face of a material is filled: solid wood by diagonals, sheets grey with lines along their
 * plies, insulation by a lattice, metal and cloth dark. All tell apart in black and white.
 */
export const hatchOf = (
  materialId: string,
  face: Bounds2,
  { isTurned, isNarrow }: HatchOptions,
): CutLook => {
  const isUpright = face.v1 - face.v0 > face.u1 - face.u0
  switch (materialById(materialId).family) {
    case 'wood':
      return { hatch: isTurned ? 'wood-reverse' : 'wood', tint: 'paper' }
    case 'sheet':
      return { hatch: isNarrow ? 'none' : isUpright ? 'ply-upright' : 'ply', tint: 'middle' }
    case 'insulation':
      return { hatch: 'foam', tint: 'paper' }
    case 'covering':
    case 'metal':
    case 'textile':
      return { hatch: 'none', tint: 'dark' }
    case 'wax':
      return { hatch: 'none', tint: 'light' }
  }
}
