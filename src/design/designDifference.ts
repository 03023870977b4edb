import { isJsonObject, type JsonObject, ownValue } from './json.ts'
import {
  LINK_LAYOUT,
  type LinkLayout,
  type LinkList,
  type LinkTable,
  shortKeysOf,
  withValueAt,
} from './linkLayout.ts'
import type { Design } from './schema.ts'

/**
 * What differs from the default design, by short keys. A key is a letter for the group, in the order
 * of the tables, and the field's place in its table in base 36: `c3` is the fourth field of `cavity`.
 * A list has a letter alone, entrances `e`; it is whole when it differs at all, each item as what
 * differs from the default one, with the field's place as key.
 */
export function packDesign(design: Design): JsonObject {
  const fields = LINK_LAYOUT.groups.flatMap((table) =>
    packFields(table, ownValue(design, table.group)),
  )
  return Object.fromEntries([...fields, ...packLists(LINK_LAYOUT.lists, design)])
}

/**
 * The design, still to be validated, that a packed difference stands for. `undefined` when a key is
 * unknown or something is no object or list where it should be.
 */
export function unpackDesign(
  json: unknown,
  layout: LinkLayout = LINK_LAYOUT,
): JsonObject | undefined {
  if (!isJsonObject(json)) return undefined
  const known = [...layout.groups.flatMap(shortKeysOf), ...layout.lists.map((l) => l.letter)]
  if (!hasOnly(json, known)) return undefined
  const groups = Object.fromEntries(
    layout.groups.map((table) => [table.group, unpackFields(table, json)]),
  )
  return unpackLists(layout.lists, json, groups)
}

function packFields(table: LinkTable, values: unknown) {
  const shortKeys = shortKeysOf(table)
  return table.keys.flatMap((key, place) => {
    const value = ownValue(values, key)
    const isDefault = value === ownValue(table.defaults, key)
    return isDefault ? [] : [[shortKeys[place] ?? '', value] as const]
  })
}

function packLists(lists: readonly LinkList[], holder: object) {
  return lists.flatMap((list) => {
    const packed = packItems(list, list.path.reduce<unknown>(ownValue, holder))
    const isDefault = JSON.stringify(packed) === JSON.stringify(packItems(list, list.whole))
    return isDefault ? [] : [[list.letter, packed] as const]
  })
}

function packItems({ item, inner = [] }: LinkList, values: unknown): readonly JsonObject[] {
  const rows: readonly object[] = Array.isArray(values) ? values : []
  return rows.map((row) => Object.fromEntries([...packFields(item, row), ...packLists(inner, row)]))
}

function unpackFields(table: LinkTable, json: JsonObject): JsonObject {
  const shortKeys = shortKeysOf(table)
  const entries = table.keys.map((key, place) => {
    const shortKey = shortKeys[place] ?? ''
    const value = Object.hasOwn(json, shortKey) ? json[shortKey] : ownValue(table.defaults, key)
    return [key, value] as const
  })
  return Object.fromEntries(entries)
}

/** The holder with its lists as the packed JSON has them; undefined when one of them is none. */
function unpackLists(
  lists: readonly LinkList[],
  json: JsonObject,
  holder: JsonObject,
): JsonObject | undefined {
  return lists.reduce<JsonObject | undefined>((before, list) => {
    if (before === undefined) return undefined
    const items = Object.hasOwn(json, list.letter)
      ? unpackItems(list, json[list.letter])
      : list.whole
    return items && withValueAt(before, list.path, items)
  }, holder)
}

function unpackItems({ item, inner = [] }: LinkList, packed: unknown) {
  if (!Array.isArray(packed)) return undefined
  const known = [...shortKeysOf(item), ...inner.map((list) => list.letter)]
  const items = packed.map((row: unknown) =>
    isJsonObject(row) && hasOnly(row, known)
      ? unpackLists(inner, row, unpackFields(item, row))
      : undefined,
  )
  return items.includes(undefined) ? undefined : items
}

function hasOnly(json: JsonObject, known: readonly string[]): boolean {
  const keys = new Set(known)
  return Object.keys(json).every((key) => keys.has(key))
}
