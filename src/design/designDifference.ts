import { DEFAULT_DESIGN, DEFAULT_ENTRANCE, DEFAULT_VENT } from './defaults.ts'
import type { Fields } from './field.ts'
import { isJsonObject, type JsonObject, ownValue } from './json.ts'
import { ENTRANCE_FIELDS, LANDING_FIELDS, VENT_FIELDS } from './openingFields.ts'
import { type Design, GROUP_FIELDS } from './schema.ts'

/**
 * What differs from the default design, by short keys. A key is a letter for the group, in the order
 * of the tables, and the field's place in its table in base 36: `c3` is the fourth field of `cavity`.
 * The lists of entrances (`e`) and vents (`v`) are whole when they differ at all, each opening as what
 * differs from the default one, with the field's place as key.
 *
 * Keys keep their meaning because tables and groups only grow at their end. Moving or removing a
 * field, or changing a default, gives old keys a new meaning and needs a new link version.
 */
export function packDesign(design: Design): JsonObject {
  const fields = TABLES.flatMap((t) =>
    packFields(t, ownValue(design, t.group), ownValue(DEFAULT_DESIGN, t.group)),
  )
  const lists = LISTS.flatMap((list) => {
    const packed = packList(list, design)
    const isDefault = JSON.stringify(packed) === JSON.stringify(packList(list, DEFAULT_DESIGN))
    return isDefault ? [] : [[list.letter, packed] as const]
  })
  return Object.fromEntries([...fields, ...lists])
}

/**
 * The design, still to be validated, that a packed difference stands for. `undefined` when a key is
 * unknown or something is no object or list where it should be.
 */
export function unpackDesign(json: unknown): JsonObject | undefined {
  if (!isJsonObject(json)) return undefined
  const known = new Set([...TABLES.flatMap(keysOf), ...LISTS.map((list) => list.letter)])
  const lists = LISTS.map((list) => [list.key, unpackList(list, json)] as const)
  if (!hasOnly(json, known) || lists.some(([, list]) => list === undefined)) return undefined
  const groups = TABLES.map((table) => {
    const fields = unpackFields(table, json, ownValue(DEFAULT_DESIGN, table.group))
    const isOpenings = table.group === 'openings'
    return [table.group, isOpenings ? { ...Object.fromEntries(lists), ...fields } : fields]
  })
  return Object.fromEntries(groups)
}

interface Table {
  readonly group: string
  readonly letter: string
  readonly fields: Fields
}

interface List {
  readonly key: 'entrances' | 'vents'
  readonly letter: string
  readonly table: Table
  readonly defaults: object
}

// The openings' own fields come after the groups that were first; a new group comes after them.
const TABLES: readonly Table[] = [
  ...Object.entries<Fields>(GROUP_FIELDS),
  ['openings', LANDING_FIELDS] as const,
].map(([group, fields], i) => ({ group, fields, letter: (10 + i).toString(36) }))

const LISTS: readonly List[] = [
  listOf('entrances', 'e', ENTRANCE_FIELDS, DEFAULT_ENTRANCE),
  listOf('vents', 'v', VENT_FIELDS, DEFAULT_VENT),
]

function listOf(key: List['key'], letter: string, fields: Fields, defaults: object): List {
  return { key, letter, defaults, table: { group: key, letter: '', fields } }
}

/** The short keys of a table's fields, in order. */
function keysOf({ letter, fields }: Table): readonly string[] {
  return Object.keys(fields).map((_, place) => `${letter}${place.toString(36)}`)
}

function packFields(table: Table, values: unknown, defaults: unknown) {
  const shortKeys = keysOf(table)
  return Object.keys(table.fields).flatMap((key, place) => {
    const value = ownValue(values, key)
    return value === ownValue(defaults, key) ? [] : [[shortKeys[place] ?? '', value] as const]
  })
}

function packList({ key, table, defaults }: List, { openings }: Design): readonly JsonObject[] {
  return openings[key].map((opening) => Object.fromEntries(packFields(table, opening, defaults)))
}

function unpackFields(table: Table, json: JsonObject, defaults: unknown): JsonObject {
  const shortKeys = keysOf(table)
  const entries = Object.keys(table.fields).map((key, place) => {
    const shortKey = shortKeys[place] ?? ''
    const value = Object.hasOwn(json, shortKey) ? json[shortKey] : ownValue(defaults, key)
    return [key, value] as const
  })
  return Object.fromEntries(entries)
}

function unpackList({ key, letter, table, defaults }: List, json: JsonObject) {
  if (!Object.hasOwn(json, letter)) return DEFAULT_DESIGN.openings[key]
  const packed = json[letter]
  const known = new Set(keysOf(table))
  if (!Array.isArray(packed)) return undefined
  const isWhole = packed.every((item) => isJsonObject(item) && hasOnly(item, known))
  return isWhole ? packed.map((item) => unpackFields(table, item, defaults)) : undefined
}

function hasOnly(json: JsonObject, known: ReadonlySet<string>): boolean {
  return Object.keys(json).every((key) => known.has(key))
}
