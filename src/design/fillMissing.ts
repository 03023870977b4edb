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
import { isJsonObject, type JsonObject, ownValue } from './json.ts'

export interface Filled {
  readonly json: JsonObject
  /** Paths of what was missing: `walls`, `walls.coreMm`, `openings.entrances.0.heightMm`. */
  readonly filled: readonly string[]
}

/**
 * Adds every missing group and field with its default, so that files written by hand work. Whatever
 * is there stays as it is, right or wrong. An item of a list is only filled when it is listed.
 */
export function fillMissing(json: JsonObject): Filled {
  const filled: string[] = []

  const fill = (value: unknown, defaults: object, path: string): unknown => {
    if (!isJsonObject(value)) return value
    const missing = Object.entries(defaults).filter(([key]) => !Object.hasOwn(value, key))
    filled.push(...missing.map(([key]) => (path === '' ? key : `${path}.${key}`)))
    // Entries make own properties whatever their names are, `__proto__` too.
    return Object.fromEntries([...Object.entries(value), ...missing])
  }

  /** A group, its lists, the lists in their items, and so on. */
  const fillDeep = (value: unknown, shape: Shape, path: string): unknown => {
    const group = fill(value, shape.defaults, path)
    if (!isJsonObject(group)) return group
    const lists = Object.entries(shape.lists ?? {}).map(([key, item]) => {
      return [key, fillEach(ownValue(group, key), item, `${path}.${key}`)]
    })
    return Object.fromEntries([...Object.entries(group), ...lists])
  }

  const fillEach = (list: unknown, shape: Shape, path: string): unknown =>
    Array.isArray(list) ? list.map((item, i) => fillDeep(item, shape, `${path}.${i}`)) : list

  const fillGroup = (key: string, value: unknown): unknown => {
    const defaults = ownValue(DEFAULT_DESIGN, key)
    if (key === 'made') return fillEach(value, { defaults: DEFAULT_MADE }, key)
    if (!isJsonObject(defaults)) return value
    return fillDeep(value, { defaults, lists: LISTS.get(key) }, key)
  }

  const groups = Object.entries(fill(json, DEFAULT_DESIGN, '') as JsonObject)
  return { json: Object.fromEntries(groups.map(([k, v]) => [k, fillGroup(k, v)])), filled }
}

/** What a group holds by default, and what an item of each of its lists does. */
interface Shape {
  readonly defaults: object
  readonly lists?: Readonly<Record<string, Shape>> | undefined
}

// A map, not an object: a group called `constructor` must find nothing.
const LISTS: ReadonlyMap<string, Readonly<Record<string, Shape>>> = new Map([
  ['openings', { entrances: { defaults: DEFAULT_ENTRANCE }, vents: { defaults: DEFAULT_VENT } }],
  [
    'stock',
    {
      lumber: { defaults: DEFAULT_LUMBER, lists: { defects: { defaults: DEFAULT_DEFECT } } },
      sheets: { defaults: DEFAULT_SHEET },
      goods: { defaults: DEFAULT_GOODS },
    },
  ],
])
