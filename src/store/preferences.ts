import { METRIC, type UnitPreferences } from '../units/preferences.ts'
import { readStored, type StorageLike, writeStored } from './storage.ts'

const KEY = 'combwright.units'

/** The units chosen at the last visit; metric for any that are missing, unknown or can't be read. */
export function loadUnits(storage: StorageLike | undefined): UnitPreferences {
  const stored = parseObject(readStored(storage, KEY))
  const units = Object.entries(ALLOWED).map(([key, allowed]) => {
    const chosen = Object.hasOwn(stored, key) ? stored[key] : undefined
    return [key, allowed.find((unit) => unit === chosen) ?? allowed[0]] as const
  })
  // Every key of UnitPreferences has one of its own allowed units.
  return Object.fromEntries(units) as unknown as UnitPreferences
}

/** Keeps the units for the next visit. False when the storage is missing or full: no harm is done. */
export function saveUnits(storage: StorageLike | undefined, units: UnitPreferences): boolean {
  return writeStored(storage, KEY, JSON.stringify(units))
}

// The metric unit stands first: it is the one taken when nothing is known.
const ALLOWED: { readonly [K in keyof UnitPreferences]: readonly UnitPreferences[K][] } = {
  length: [METRIC.length, 'in'],
  thermal: [METRIC.thermal, 'us'],
  mass: [METRIC.mass, 'lb'],
  temperature: [METRIC.temperature, 'f'],
}

function parseObject(text: string | undefined): Readonly<Record<string, unknown>> {
  try {
    const json: unknown = JSON.parse(text ?? '{}')
    return typeof json === 'object' && json !== null ? { ...json } : {}
  } catch {
    return {}
  }
}
