import { materialById } from '../../catalog/materials.ts'
import { solidVolume } from '../../geometry/solid.ts'
import type { Part } from '../../hive/part.ts'

const MM3_PER_M3 = 1e9

/** Volume of a part's solids, m³. Screw holes and drilled holes are not taken off. */
export const partVolumeM3 = (part: Pick<Part, 'solids'>): number => {
  let volume = 0
  for (const solid of part.solids) volume += solidVolume(solid)
  return volume / MM3_PER_M3
}

/**
 * Mass of a part, kg: its solids times the density of its material. The density of mesh counts the
 * air between the wires. Throws when the catalogue has no such material.
 */
export const partMassKg = (part: Pick<Part, 'solids' | 'material'>): number =>
  partVolumeM3(part) * materialById(part.material).densityKgPerM3
