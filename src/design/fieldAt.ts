import type { Field, Fields } from './field.ts'
import { ENTRANCE_FIELDS, LANDING_FIELDS, VENT_FIELDS } from './openingFields.ts'
import { GROUP_FIELDS } from './schema.ts'

/**
 * The field that a dotted path names: `cavity.endBarSpaceMm`, `openings.entrances.0.heightMm`. The
 * number of an entrance or vent is not checked. `undefined` when there is no such field.
 */
export function fieldAt(path: string): Field | undefined {
  return fieldByPath.get(path.replace(LIST_NUMBER, '.*.'))
}

/** The fields of each group by the group's path; `*` stands for the number of an opening. */
export const FIELD_TABLES: ReadonlyMap<string, Fields> = new Map<string, Fields>([
  ...Object.entries(GROUP_FIELDS),
  ['openings', LANDING_FIELDS],
  ['openings.entrances.*', ENTRANCE_FIELDS],
  ['openings.vents.*', VENT_FIELDS],
])

/** Where a field stands, in words: `Walls: Lining thickness`, `Entrance 2: Height`. */
export function fieldTitle(path: string): string {
  const label = fieldAt(path)?.label
  return label === undefined ? groupTitle(path) : `${groupTitle(path)}: ${label}`
}

/** The group that a path is in, in words; the path itself when no group is known. */
export function groupTitle(path: string): string {
  const [group = '', list, index] = path.split('.')
  const opening = group === 'openings' ? OPENING_TITLES.get(list ?? '') : undefined
  if (opening !== undefined) {
    return index === undefined ? `${opening}s` : `${opening} ${Number(index) + 1}`
  }
  return GROUP_TITLES.get(group) ?? path
}

const LIST_NUMBER = /\.\d+\./

// Maps, not objects: a path such as `constructor` must find nothing.
const GROUP_TITLES: ReadonlyMap<string, string> = new Map([
  ['title', 'Title'],
  ['frame', 'Frame'],
  ['cavity', 'Cavity'],
  ['walls', 'Walls'],
  ['lid', 'Lid'],
  ['floor', 'Floor'],
  ['openings', 'Openings'],
  ['stand', 'Stand'],
  ['site', 'Site'],
  ['colony', 'Colony'],
  ['shop', 'Workshop'],
  ['keeper', 'Keeper'],
])

const OPENING_TITLES: ReadonlyMap<string, string> = new Map([
  ['entrances', 'Entrance'],
  ['vents', 'Vent'],
])

const fieldByPath: ReadonlyMap<string, Field> = new Map(
  [...FIELD_TABLES].flatMap(([group, fields]) =>
    Object.entries(fields).map(([key, field]) => [`${group}.${key}`, field] as const),
  ),
)
