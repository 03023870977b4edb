import { z } from 'zod'
import { describeValue } from '../src/design/describeValue.ts'
import { isJsonObject, ownValue } from '../src/design/json.ts'
import type { LumberJob } from '../src/solvers/cutting/lumber/lumberJob.ts'
import type { SheetJob } from '../src/solvers/cutting/sheets/sheetJob.ts'

/** More of a kind help nobody; the rest is counted. */
const MOST_SHOWN = 20

const mm = z.number().positive()
const mmOrNone = z.number().nonnegative()
const id = z.string().optional()
const count = z.int().nonnegative()
/** Left out for any number of them. */
const supply = count.nullish()
const price = z.number().nonnegative()

const lumberSchema = z.object({
  stocks: z.array(z.object({ id, lengthMm: mm, price, count: supply })),
  kerfMm: mmOrNone,
  trimMm: mmOrNone.default(0),
  parts: z.array(z.object({ id, lengthMm: mm, count: count.default(1) })),
})

const sheetsSchema = z.object({
  stocks: z.array(z.object({ id, lengthMm: mm, widthMm: mm, price, count: supply })),
  kerfMm: mmOrNone,
  trimMm: mmOrNone.default(0),
  stages: z.union([z.literal('any'), z.int().min(2)]).default(3),
  carry: z.object({ lengthMm: mm, widthMm: mm }).optional(),
  parts: z.array(
    z.object({
      id,
      lengthMm: mm,
      widthMm: mm,
      count: count.default(1),
      mayTurn: z.boolean().default(false),
    }),
  ),
})

const cutFileSchema = z.object({
  lumber: lumberSchema.optional(),
  sheets: sheetsSchema.optional(),
})

/** What is to be cut, as the solvers take it; stocks and parts without an id are named by their place. */
export interface CutFile {
  readonly lumber: LumberJob | undefined
  readonly sheets: SheetJob | undefined
}

export type CutFileRead =
  | { readonly kind: 'ok'; readonly file: CutFile; readonly warnings: readonly string[] }
  | { readonly kind: 'bad'; readonly messages: readonly string[] }

/** Reads the text of a file with parts to cut and what there is to cut them from. */
export const readCutFile = (text: string): CutFileRead => {
  const json = parseJson(text)
  if (json === undefined) return bad(['The file is not JSON, or it is cut short.'])
  const parsed = cutFileSchema.safeParse(json)
  const unknown = findUnknown(json, cutFileSchema, [])
  if (!parsed.success) {
    return bad([...unknown, ...parsed.error.issues.map((issue) => describeIssue(issue, json))])
  }
  const { lumber, sheets } = parsed.data
  if (lumber === undefined && sheets === undefined) {
    return bad([...unknown, 'The file has neither lumber nor sheets, so there is nothing to cut.'])
  }
  const file = { lumber: lumber && lumberJob(lumber), sheets: sheets && sheetJob(sheets) }
  return { kind: 'ok', file, warnings: shorten(unknown) }
}

/** How messages call a stock that has no id. */
export const nameStock = (index: number): string => `stocks[${index}]`

/** How messages call a part that has no id. */
export const namePart = (index: number): string => `parts[${index}]`

const lumberJob = ({ stocks, parts, ...job }: z.infer<typeof lumberSchema>): LumberJob => ({
  ...job,
  stocks: stocks.map(stockWithId),
  parts: parts.map(partWithId),
})

const sheetJob = (read: z.infer<typeof sheetsSchema>): SheetJob => {
  const { stocks, parts, stages, carry, ...job } = read
  return {
    ...job,
    stocks: stocks.map(stockWithId),
    parts: parts.map(partWithId),
    stages: stages === 2 || stages === 3 || stages === 4 ? stages : 'any',
    ...(carry === undefined ? {} : { carry }),
  }
}

interface Entry {
  readonly id?: string | undefined
}

interface Supplied extends Entry {
  readonly count?: number | null | undefined
}

const stockWithId = <Stock extends Supplied>(
  { id: own, count: most, ...stock }: Stock,
  index: number,
) => ({
  id: own ?? nameStock(index),
  ...stock,
  ...(typeof most === 'number' ? { count: most } : {}),
})

const partWithId = <Part extends Entry>({ id: own, ...part }: Part, index: number) => ({
  id: own ?? namePart(index),
  ...part,
})

const bad = (messages: readonly string[]): CutFileRead => ({
  kind: 'bad',
  messages: shorten(messages),
})

const shorten = (messages: readonly string[]): readonly string[] =>
  messages.length <= MOST_SHOWN
    ? messages
    : [...messages.slice(0, MOST_SHOWN), `And ${messages.length - MOST_SHOWN} more of this kind.`]

const parseJson = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

/** Keys that nobody reads, most likely misspelt: `lumber.parts[2].lenght is not known`. */
const findUnknown = (
  json: unknown,
  schema: unknown,
  path: readonly PropertyKey[],
): readonly string[] => {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault) {
    return findUnknown(json, schema.unwrap(), path)
  }
  if (schema instanceof z.ZodArray && Array.isArray(json)) {
    return json.flatMap((entry, i) => findUnknown(entry, schema.element, [...path, i]))
  }
  if (!(schema instanceof z.ZodObject && isJsonObject(json))) return []
  return Object.keys(json).flatMap((key) => {
    const inner = ownValue(schema.shape, key)
    const where = [...path, key]
    return inner === undefined
      ? [`${describePath(where)} is not known and is left alone.`]
      : findUnknown(json[key], inner, where)
  })
}

const describeIssue = ({ path }: z.core.$ZodIssue, json: unknown): string => {
  const value = path.reduce(ownValue, json)
  const is = value === undefined ? 'is missing' : `is ${describeValue(value)}`
  const last = path.at(-1)
  const isEntry = typeof last === 'number'
  const allowed = isEntry ? AN_ENTRY[String(path.at(-2))] : ALLOWED[String(last ?? '')]
  return `${describePath(path)} ${is}, but must be ${allowed ?? 'a number'}.`
}

const describePath = (path: readonly PropertyKey[]): string =>
  path
    .map((key) => (typeof key === 'number' ? `[${key}]` : `.${String(key)}`))
    .join('')
    .replace(/^\./, '') || 'The file'

const AN_ENTRY: Readonly<Record<string, string>> = {
  stocks: 'a board or sheet in { }, with its size and price',
  parts: 'a part in { }, with its size and count',
}

const ALLOWED: Readonly<Record<string, string>> = {
  '': 'an object with lumber, sheets or both',
  lumber: 'an object with stocks, kerfMm and parts',
  sheets: 'an object with stocks, kerfMm and parts',
  stocks: 'a list of what there is to cut from',
  parts: 'a list of what is to be cut',
  id: 'a text',
  lengthMm: 'a length above 0, in mm',
  widthMm: 'a width above 0, in mm',
  price: 'a price from 0 up',
  count: 'a whole number from 0 up',
  kerfMm: 'the width of the saw cut from 0 up, in mm',
  trimMm: 'a length from 0 up, in mm',
  stages: '2, 3, 4 or "any"',
  carry: 'an object with lengthMm and widthMm',
  mayTurn: 'true or false',
}
