import { isJsonObject, type JsonObject } from './json.ts'

/** Brings a document from version `from` to the next. Pure; it must bear any JSON, valid or not. */
export interface Migration {
  readonly from: number
  readonly apply: (json: JsonObject) => JsonObject
}

/**
 * Version 2 (the workshop): a saw of three kinds instead of a table saw or none, how boards and sheets
 * are cut, what is in stock and what is cut already. The values are those that version 2 began with.
 */
const toWorkshop: Migration = {
  from: 1,
  apply: (json) => ({
    stock: { lumber: [], sheets: [], goods: [] },
    made: [],
    ...json,
    ...(isJsonObject(json.shop) && { shop: withTools(json.shop) }),
  }),
}

function withTools({ tableSaw, ...shop }: JsonObject): JsonObject {
  const tools = tableSaw === true ? 'table-saw' : tableSaw === false ? 'circular-saw' : tableSaw
  return {
    guideOffsetMm: 110,
    endTrimMm: 20,
    sheetTrimMm: 5,
    sheetStages: 'three',
    cutToCarry: false,
    carryLengthMm: 1500,
    carryWidthMm: 1250,
    useOnHand: true,
    keepOffcutMm: 300,
    hivesAtOnce: 1,
    currency: '',
    fastening: 'screws',
    finish: 'linseed-oil',
    ...shop,
    // What was wrong before stays wrong, so that it is told.
    ...(tools !== undefined && { tools }),
  }
}

/**
 * Every step from version 1 to the present one, in order and without a gap. A step once released is
 * never changed.
 */
export const MIGRATIONS: readonly Migration[] = [toWorkshop]

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
