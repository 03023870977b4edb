import { COVERINGS } from './coverings.ts'
import { INSULATIONS } from './insulations.ts'
import type { Material } from './material.ts'
import { SHEETS } from './sheets.ts'
import { SUNDRIES } from './sundries.ts'
import { WOODS } from './woods.ts'

/** Every material a design may name, in the order pick lists show them. */
export const MATERIALS: readonly Material[] = [
  ...WOODS,
  ...SHEETS,
  ...INSULATIONS,
  ...COVERINGS,
  ...SUNDRIES,
]

const rowById: ReadonlyMap<string, Material> = new Map(MATERIALS.map((row) => [row.id, row]))

/** The material with this id. Throws an Error that names the id if there is none. */
export function materialById(id: string): Material {
  const material = rowById.get(id)
  if (material === undefined) throw new Error(`There is no material called "${id}".`)
  return material
}

/** True if `materialById` would find this id. */
export function hasMaterial(id: string): boolean {
  return rowById.has(id)
}
