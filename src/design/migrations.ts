import type { JsonObject } from './json.ts'

/** Brings a document from version `from` to the next. Pure; it must bear any JSON, valid or not. */
export interface Migration {
  readonly from: number
  readonly apply: (json: JsonObject) => JsonObject
}

/**
 * Every step from version 1 to the present one, in order and without a gap. Version 1 is the first,
 * so there are none yet. A step once released is never changed.
 */
export const MIGRATIONS: readonly Migration[] = []

export type Migrated =
  | { readonly kind: 'ok'; readonly json: JsonObject }
  | { readonly kind: 'bad'; readonly message: string }

/**
 * Applies every step from version `from` on; the version reached is the number of steps plus one.
 * Refuses a list with a gap, a version outside 1 to that number, and a step that fails. Never throws.
 */
export function migrate(
  json: JsonObject,
  from: number,
  migrations: readonly Migration[] = MIGRATIONS,
): Migrated {
  const gap = migrations.findIndex((step, index) => step.from !== index + 1)
  if (gap !== -1) {
    return { kind: 'bad', message: `The step from version ${gap + 1} to ${gap + 2} is missing.` }
  }
  const newest = migrations.length + 1
  if (!Number.isInteger(from) || from < 1 || from > newest) {
    return { kind: 'bad', message: `There is no version ${from}; the newest is ${newest}.` }
  }
  try {
    return { kind: 'ok', json: migrations.slice(from - 1).reduce((old, m) => m.apply(old), json) }
  } catch {
    const message = `This design of version ${from} is damaged and could not be brought up to date.`
    return { kind: 'bad', message: `${message} Choose another copy of it.` }
  }
}
