import { materialById } from '../../catalog/materials.ts'
import type { HatchKind, Tint } from '../drawing.ts'
import type { Bounds2 } from './polygon2.ts'

export interface CutLook {
  readonly hatch: HatchKind
  readonly tint: Tint
}

/**
 * How a cut face of a material is filled: solid wood by diagonals, sheets by lines along their plies,
 * insulation by a light ground with a cross, metal dark. Insulation and thin stuff read in black and
 * white. `turned` gives the other diagonal, for a neighbour of the same material.
 */
export const hatchOf = (materialId: string, face: Bounds2, turned: boolean): CutLook => {
  const isUpright = face.v1 - face.v0 > face.u1 - face.u0
  switch (materialById(materialId).family) {
    case 'wood':
      return { hatch: turned ? 'wood-reverse' : 'wood', tint: 'paper' }
    case 'sheet':
      return { hatch: isUpright ? 'ply-upright' : 'ply', tint: 'middle' }
    case 'insulation':
      return { hatch: 'foam', tint: 'paper' }
    case 'covering':
    case 'metal':
      return { hatch: 'none', tint: 'dark' }
    case 'textile':
      return { hatch: 'none', tint: 'dark' }
    case 'wax':
      return { hatch: 'none', tint: 'light' }
  }
}
