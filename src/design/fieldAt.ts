import type { Field, Fields } from './field.ts'
import { MADE_SIZE_FIELDS } from './madeFields.ts'
import { ENTRANCE_FIELDS, LANDING_FIELDS, VENT_FIELDS } from './openingFields.ts'
import { GROUP_FIELDS } from './schema.ts'
import {
  DEFECT_FIELDS,
  GOODS_PRICE_FIELDS,
  LUMBER_STOCK_FIELDS,
  SHEET_STOCK_FIELDS,
} from './stockFields.ts'

/**
 * The field that a dotted path names: `cavity.endBarSpaceMm`, `openings.entrances.0.heightMm`,
 * `stock.lumber.0.defects.1.fromMm`. The number of an item in a list is not checked. `undefined` when
 * there is no such field.
 */
export function fieldAt(path: string): Field | undefined {
  return fieldByPath.get(path.replace(LIST_NUMBER, '.*'))
}

/** The fields of each group by the group's path; `*` stands for the number of an item in a list. */
export const FIELD_TABLES: ReadonlyMap<string, Fields> = new Map<string, Fields>([
  ...Object.entries(GROUP_FIELDS),
  ['openings', LANDING_FIELDS],
  ['openings.entrances.*', ENTRANCE_FIELDS],
  ['openings.vents.*', VENT_FIELDS],
  ['stock.lumber.*', LUMBER_STOCK_FIELDS],
  ['stock.lumber.*.defects.*', DEFECT_FIELDS],
  ['stock.sheets.*', SHEET_STOCK_FIELDS],
  ['stock.goods.*', GOODS_PRICE_FIELDS],
  ['made.*', MADE_SIZE_FIELDS],
])

/** Where a field stands, in words: `Walls: Lining thickness`, `Board 1, bad place 2: Bad from`. */
export function fieldTitle(path: string): string {
  const label = fieldAt(path)?.label
  return label === undefined ? groupTitle(path) : `${groupTitle(path)}: ${label}`
}

/** The group that a path is in, in words; the path itself when no group is known. */
export function groupTitle(path: string): string {
  const [group = ''] = path.split('.')
  const titles = [...LIST_TITLES].flatMap(([list, title]) => {
    const inList = list.exec(path)
    if (inList === null) return []
    const [, index] = inList
    return index === undefined ? `${title}s` : `${title} ${Number(index) + 1}`
  })
  const [first, ...inner] = titles
  if (first === undefined) return GROUP_TITLES.get(group) ?? path
  return [first, ...inner.map((title) => title.toLowerCase())].join(', ')
}

/** The number of an item in a list, before the name of what is in it. */
const LIST_NUMBER = /\.\d+(?=\.)/g

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
  ['stock', 'Stock'],
])

/** What one item of a list is called. Outer lists before those in them. */
const LIST_TITLES: ReadonlyMap<RegExp, string> = new Map([
  [/^openings\.entrances(?:\.(\d+))?/, 'Entrance'],
  [/^openings\.vents(?:\.(\d+))?/, 'Vent'],
  [/^stock\.lumber(?:\.(\d+))?/, 'Board'],
  [/^stock\.lumber\.\d+\.defects(?:\.(\d+))?/, 'Bad place'],
  [/^stock\.sheets(?:\.(\d+))?/, 'Sheet'],
  [/^stock\.goods(?:\.(\d+))?/, 'Article'],
  [/^made(?:\.(\d+))?/, 'Cut part'],
])

const fieldByPath: ReadonlyMap<string, Field> = new Map(
  [...FIELD_TABLES].flatMap(([group, fields]) =>
    Object.entries(fields).map(([key, field]) => [`${group}.${key}`, field] as const),
  ),
)
