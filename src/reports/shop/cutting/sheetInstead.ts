import { isOffered } from '../../../design/field.ts'
import { fieldAt } from '../../../design/fieldAt.ts'
import { ownValue } from '../../../design/json.ts'
import type { Design } from '../../../design/schema.ts'
import type { PartGroup } from '../../../hive/part.ts'
import type { CutListRow } from '../shopReport.ts'
import type { CuttingProblem } from './cuttingPlan.ts'

const PLYWOOD = 'plywood-softwood'

/** Plywood for a row of solid wood, where one field of the design chooses its material. */
export const sheetInstead = (design: Design, row: CutListRow): CuttingProblem['remedies'] => {
  const paths = [...new Set(row.groups.flatMap((group) => FIELDS_OF[group] ?? []))]
  const fields = paths.filter((path) => {
    const field = fieldAt(path)
    const value = path.split('.').reduce<unknown>(ownValue, design)
    return value === row.material && field?.kind === 'material' && isOffered(field, PLYWOOD)
  })
  // Of a lining and a cladding of the same wood the part's name tells which it is.
  const named = fields.filter((path) => row.name.toLowerCase().includes(wordOf(path)))
  const [field] = named.length === 1 ? named : fields
  if (field === undefined || (fields.length > 1 && named.length !== 1)) return []
  return [{ text: 'Make it of plywood.', changes: [{ field, value: PLYWOOD }] }]
}

/** `walls.liningMaterial` as it stands in the names of parts: `lining`. */
const wordOf = (path: string): string => path.replace(/^.*\.|Material$/g, '')

const WALL = ['walls.liningMaterial', 'walls.claddingMaterial']

const FIELDS_OF: Partial<Readonly<Record<PartGroup, readonly string[]>>> = {
  'front-wall': WALL,
  'back-wall': WALL,
  'left-wall': WALL,
  'right-wall': WALL,
  floor: ['floor.liningMaterial', 'floor.claddingMaterial'],
  lid: ['lid.liningMaterial', 'lid.claddingMaterial'],
  roof: ['lid.claddingMaterial'],
  covers: ['cavity.coverMaterial'],
  boards: ['cavity.boardMaterial'],
}
