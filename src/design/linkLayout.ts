import {
  DEFAULT_DEFECT,
  DEFAULT_DESIGN,
  DEFAULT_ENTRANCE,
  DEFAULT_GOODS,
  DEFAULT_LUMBER,
  DEFAULT_MADE,
  DEFAULT_SHEET,
  DEFAULT_VENT,
} from './defaults.ts'
import type { Fields } from './field.ts'
import type { JsonObject } from './json.ts'
import { MADE_SIZE_FIELDS } from './madeFields.ts'
import { ENTRANCE_FIELDS, LANDING_FIELDS, VENT_FIELDS } from './openingFields.ts'
import { GROUP_FIELDS } from './schema.ts'
import {
  DEFECT_FIELDS,
  GOODS_PRICE_FIELDS,
  LUMBER_STOCK_FIELDS,
  SHEET_STOCK_FIELDS,
} from './stockFields.ts'

/** Fields in the order that their short keys count; each is a letter and the place in base 36. */
export interface LinkTable {
  readonly letter: string
  readonly keys: readonly string[]
  readonly defaults: object
}

/** A list in the document; its items have keys without a letter. */
export interface LinkList {
  readonly letter: string
  /** Keys from the document, or from the item that the list is in, down to the list. */
  readonly path: readonly string[]
  readonly item: LinkTable
  /** What the list holds when the link does not name it. */
  readonly whole: readonly object[]
  readonly inner?: readonly LinkList[]
}

/** Which short key of a link stands for which field: one layout for each version of links. */
export interface LinkLayout {
  readonly groups: readonly (LinkTable & { readonly group: string })[]
  readonly lists: readonly LinkList[]
}

/** The groups' tables with their letters, a, b, c and so on in the given order. */
export function letterGroups(
  groups: readonly (readonly [string, readonly string[], object])[],
): LinkLayout['groups'] {
  return groups.map(([group, keys, defaults], i) => {
    return { group, keys, defaults, letter: (10 + i).toString(36) }
  })
}

const items = (fields: Fields, defaults: object): LinkTable => {
  return { letter: '', keys: Object.keys(fields), defaults }
}

/**
 * The layout of the links that this program writes. Keys keep their meaning because tables, groups and
 * lists only grow at their end. Moving or removing a field, or changing a default, gives old keys a
 * new meaning and needs a new link version.
 */
export const LINK_LAYOUT: LinkLayout = {
  groups: letterGroups([
    ...Object.entries<Fields>(GROUP_FIELDS).map(([group, fields]) => {
      const defaults = DEFAULT_DESIGN[group as keyof typeof GROUP_FIELDS]
      return [group, Object.keys(fields), defaults] as const
    }),
    // The openings' own fields come after the groups that were first; a new group comes after them.
    ['openings', Object.keys(LANDING_FIELDS), DEFAULT_DESIGN.openings],
  ]),
  lists: [
    {
      letter: 'e',
      path: ['openings', 'entrances'],
      item: items(ENTRANCE_FIELDS, DEFAULT_ENTRANCE),
      whole: DEFAULT_DESIGN.openings.entrances,
    },
    {
      letter: 'v',
      path: ['openings', 'vents'],
      item: items(VENT_FIELDS, DEFAULT_VENT),
      whole: DEFAULT_DESIGN.openings.vents,
    },
    {
      letter: 'w',
      path: ['stock', 'lumber'],
      item: items(LUMBER_STOCK_FIELDS, DEFAULT_LUMBER),
      whole: DEFAULT_DESIGN.stock.lumber,
      inner: [
        { letter: 'z', path: ['defects'], item: items(DEFECT_FIELDS, DEFAULT_DEFECT), whole: [] },
      ],
    },
    {
      letter: 's',
      path: ['stock', 'sheets'],
      item: items(SHEET_STOCK_FIELDS, DEFAULT_SHEET),
      whole: DEFAULT_DESIGN.stock.sheets,
    },
    {
      letter: 'g',
      path: ['stock', 'goods'],
      item: items(GOODS_PRICE_FIELDS, DEFAULT_GOODS),
      whole: DEFAULT_DESIGN.stock.goods,
    },
    {
      letter: 'm',
      path: ['made'],
      item: items(MADE_SIZE_FIELDS, DEFAULT_MADE),
      whole: DEFAULT_DESIGN.made,
    },
  ],
}

/** The short keys of a table's fields, in order. */
export function shortKeysOf({ letter, keys }: LinkTable): readonly string[] {
  return keys.map((_, place) => `${letter}${place.toString(36)}`)
}

/** A JSON object with one value set, at that path. */
export function withValueAt(json: JsonObject, path: readonly string[], value: unknown): JsonObject {
  const [key, ...rest] = path
  if (key === undefined) return json
  if (rest.length === 0) return { ...json, [key]: value }
  return { ...json, [key]: withValueAt((json[key] ?? {}) as JsonObject, rest, value) }
}
