import { z } from 'zod'
import { describeValue } from '../src/design/describeValue.ts'
import { ownValue } from '../src/design/json.ts'

const place = z.object({
  x0: z.number(),
  x1: z.number(),
  y0: z.number(),
  y1: z.number(),
  z0: z.number(),
  z1: z.number(),
})

const resistance = z.number().nonnegative()

/** A finer grid along one axis could never be solved. */
const MOST_CELLS_ALONG = 10_000

/** A block's index must fit the solver's answer. */
const MOST_BOXES = 60_000

const boxFileSchema = z.object({
  boxes: z
    .array(place.extend({ name: z.string().optional(), k: z.number().positive() }))
    .min(1)
    .max(MOST_BOXES),
  cavity: place,
  bc: z.object({ Ti: z.number(), Te: z.number(), Rsi: resistance, Rse: resistance }),
  grid: z
    .object({ h: z.number().positive(), min_cells: z.int().positive().max(100).optional() })
    .optional(),
})

/** Boxes of matter round one cavity, as the file has them: metres, W/(m·K), m²K/W, °C, z upwards. */
export type BoxFile = z.infer<typeof boxFileSchema>

export type BoxPlace = z.infer<typeof place>

export type BoxFileRead =
  | { readonly kind: 'ok'; readonly file: BoxFile }
  | { readonly kind: 'bad'; readonly messages: readonly string[] }

/** Reads the text of a file of boxes. What it does not know, such as a comment, it leaves alone. */
export const readBoxFile = (text: string): BoxFileRead => {
  const json = parseJson(text)
  if (json === undefined) return bad(['The file is not JSON, or it is cut short.'])
  const parsed = boxFileSchema.safeParse(json)
  if (!parsed.success) return bad(parsed.error.issues.map((issue) => describeIssue(issue, json)))
  const file = parsed.data
  const wrong = [
    ...file.boxes.flatMap((box, i) => insideOut(boxName(i, box.name), box)),
    ...insideOut('cavity', file.cavity),
    ...tooFine(file),
    ...(isFlat(file.cavity) ? ['cavity has no volume.'] : []),
    ...(file.bc.Ti === file.bc.Te
      ? ['bc.Ti and bc.Te are alike, so no heat flows. Give two temperatures.']
      : []),
  ]
  return wrong.length > 0 ? bad(wrong) : { kind: 'ok', file }
}

/** True when a box has no extent along some axis: it holds no matter. */
export const isFlat = ({ x0, x1, y0, y1, z0, z1 }: BoxPlace): boolean =>
  x0 === x1 || y0 === y1 || z0 === z1

/** `boxes[3] (rail)`, as a person finds it in the file. */
export const boxName = (index: number, name: string | undefined): string =>
  name === undefined ? `boxes[${index}]` : `boxes[${index}] (${name})`

const bad = (messages: readonly string[]): BoxFileRead => ({ kind: 'bad', messages })

const parseJson = (text: string): unknown => {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

const insideOut = (name: string, box: BoxPlace): readonly string[] =>
  (['x', 'y', 'z'] as const).flatMap((axis) => {
    const [from, to] = [box[`${axis}0`], box[`${axis}1`]]
    return from > to ? [`${name}: ${axis}0 is ${from}, beyond ${axis}1 at ${to}.`] : []
  })

const tooFine = ({ boxes, grid }: BoxFile): readonly string[] => {
  if (grid === undefined) return []
  const extent = (from: 'x0' | 'y0' | 'z0', to: 'x1' | 'y1' | 'z1'): number =>
    boxes.reduce((high, box) => Math.max(high, box[to]), -Infinity) -
    boxes.reduce((low, box) => Math.min(low, box[from]), Infinity)
  const longest = Math.max(extent('x0', 'x1'), extent('y0', 'y1'), extent('z0', 'z1'))
  const least = longest / MOST_CELLS_ALONG
  if (grid.h >= least) return []
  return [`grid.h is ${grid.h}, too fine for boxes ${longest} m long. Make it ${least} or more.`]
}

const describeIssue = ({ path }: z.core.$ZodIssue, json: unknown): string => {
  const value = path.reduce(ownValue, json)
  const [head, index, ...rest] = path
  const name = path.slice(0, 2).reduce(ownValue, json)
  const where =
    head === 'boxes' && typeof index === 'number'
      ? [boxName(index, textOf(ownValue(name, 'name'))), ...rest].join('.')
      : path.join('.') || 'The file'
  const last = String(path.at(-1) ?? '')
  const is = value === undefined ? 'is missing' : `is ${describeValue(value)}`
  const isBox = typeof path.at(-1) === 'number'
  return `${where} ${is}, but must be ${isBox ? A_BOX : (ALLOWED[last] ?? 'a number')}.`
}

const textOf = (value: unknown): string | undefined =>
  typeof value === 'string' ? value : undefined

const A_BOX = 'a box: x0, x1, y0, y1, z0, z1 and k'

const ALLOWED: Readonly<Record<string, string>> = {
  '': 'an object with boxes, cavity and bc',
  boxes: `a list of 1 to ${MOST_BOXES} boxes`,
  cavity: 'an object with x0, x1, y0, y1, z0 and z1 in metres',
  bc: 'an object with Ti, Te, Rsi and Rse',
  grid: 'an object with h, in metres, and perhaps min_cells',
  k: 'a conductivity above 0, W/(m·K)',
  name: 'a text',
  Rsi: 'a resistance from 0 up, m²K/W',
  Rse: 'a resistance from 0 up, m²K/W',
  h: 'a width above 0, m',
  min_cells: 'a whole number from 1 to 100',
}
