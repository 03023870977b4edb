import type { LumberAnswer, LumberJob } from '../src/solvers/cutting/lumber/lumberJob.ts'
import type {
  CutNode,
  SheetAnswer,
  SheetJob,
  SheetPiece,
  SheetRect,
} from '../src/solvers/cutting/sheets/sheetJob.ts'
import { namePart, nameStock } from './cutFile.ts'

/** A plan for boards as the cut command prints it. */
export const describeLumberPlan = (job: LumberJob, answer: LumberAnswer, milliseconds: number) =>
  roundNumbers({
    price: answer.price,
    bound: answer.bound,
    proven: answer.proven,
    milliseconds: Math.round(milliseconds),
    plainPrice: answer.plainPrice,
    boards: answer.boards,
    bars: answer.patterns.map(({ stock, count, pieces, offcutMm }) => ({
      stock,
      ...idOf(job.stocks[stock], nameStock(stock)),
      lengthMm: job.stocks[stock]?.lengthMm,
      price: job.stocks[stock]?.price,
      count,
      pieces: pieces.map(({ part, fromMm, lengthMm }) => ({
        part,
        ...idOf(job.parts[part], namePart(part)),
        fromMm,
        lengthMm,
      })),
      offcutMm,
    })),
    certificate: answer.certificate ?? null,
  })

/** A plan for sheets as the cut command prints it. */
export const describeSheetPlan = (job: SheetJob, answer: SheetAnswer, milliseconds: number) => {
  const describePiece = ({ part, turned, ...place }: SheetPiece) => ({
    part,
    ...idOf(job.parts[part], namePart(part)),
    ...describePlace(place),
    turned,
  })
  const describeCuts = (node: CutNode): PrintedNode => {
    if (node.kind === 'part') return { kind: 'part', ...describePiece(node.piece) }
    if (node.kind === 'offcut') return { kind: 'offcut', ...describePlace(node.rect) }
    const { rect, along, atMm, isCarry, first, second } = node
    return {
      kind: 'cut',
      ...describePlace(rect),
      along,
      atMm,
      isCarry,
      first: describeCuts(first),
      second: describeCuts(second),
    }
  }
  return roundNumbers({
    price: answer.price,
    bound: answer.bound,
    boundBy: answer.boundBy,
    proven: answer.proven,
    milliseconds: Math.round(milliseconds),
    sheets: answer.sheets,
    layouts: answer.layouts.map(({ stock, count, stages, pieces, offcuts, root }) => ({
      stock,
      ...idOf(job.stocks[stock], nameStock(stock)),
      lengthMm: job.stocks[stock]?.lengthMm,
      widthMm: job.stocks[stock]?.widthMm,
      price: job.stocks[stock]?.price,
      count,
      stages,
      pieces: pieces.map(describePiece),
      offcuts: offcuts.map(describePlace),
      cuts: describeCuts(root),
    })),
  })
}

type PrintedNode = { readonly kind: CutNode['kind'] } & Readonly<Record<string, unknown>>

/** The name that the file itself gave; nothing where a place in its lists had to do. */
const idOf = (entry: { readonly id: string } | undefined, place: string) =>
  entry === undefined || entry.id === place ? {} : { id: entry.id }

/** Without whatever else the solver keeps with it. */
const describePlace = ({ xMm, yMm, lengthMm, widthMm }: SheetRect): SheetRect => ({
  xMm,
  yMm,
  lengthMm,
  widthMm,
})

/** Millionths: finer than 1/64 inch needs, coarser than the dust of floating point sums. */
const FINENESS = 1e6

const roundNumbers = <Value>(value: Value): Value =>
  JSON.parse(
    JSON.stringify(value, (_, inner: unknown) =>
      typeof inner === 'number' ? Math.round(inner * FINENESS) / FINENESS : inner,
    ),
  )
