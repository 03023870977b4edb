import { DEFAULT_DESIGN, DEFAULT_ENTRANCE, DEFAULT_VENT } from './defaults.ts'
import { isJsonObject, type JsonObject, ownValue } from './json.ts'

export interface Filled {
  readonly json: JsonObject
  /** Paths of what was missing: `walls`, `walls.coreMm`, `openings.entrances.0.heightMm`. */
  readonly filled: readonly string[]
}

/**
 * Adds every missing group and field with its default, so that files written by hand work. Whatever
 * is there stays as it is, right or wrong. An entrance or vent is only filled when it is listed.
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

  const fillEach = (list: unknown, defaults: object, path: string): unknown =>
    Array.isArray(list) ? list.map((item, i) => fill(item, defaults, `${path}.${i}`)) : list

  const fillGroup = (key: string, value: unknown): unknown => {
    const defaults = ownValue(DEFAULT_DESIGN, key)
    if (!isJsonObject(defaults)) return value
    const group = fill(value, defaults, key)
    if (key !== 'openings' || !isJsonObject(group)) return group
    return {
      ...group,
      entrances: fillEach(group.entrances, DEFAULT_ENTRANCE, 'openings.entrances'),
      vents: fillEach(group.vents, DEFAULT_VENT, 'openings.vents'),
    }
  }

  const groups = Object.entries(fill(json, DEFAULT_DESIGN, '') as JsonObject)
  return { json: Object.fromEntries(groups.map(([k, v]) => [k, fillGroup(k, v)])), filled }
}
