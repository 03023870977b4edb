import type {
  SheetAnswer,
  SheetJob,
  SheetLayout,
  SheetPiece,
} from '../../../src/solvers/cutting/sheets/sheetJob.ts'
import { checkPlaces } from './checkPlaces.ts'
import { isAlike } from './rects.ts'
import { replayCuts } from './replayCuts.ts'

const EVEN_PRICE = 1e-6

/**
 * What is wrong with a plan, one sentence a fault; none for a plan that can be sawn as it is printed.
 * Looks only at the job and the answer, and shares nothing with the solver. Each sheet is checked in
 * two ways: by sawing it as the tree of cuts says, and by the places of its pieces alone.
 */
export const checkSheetPlan = (job: SheetJob, answer: SheetAnswer): readonly string[] => [
  ...answer.layouts.flatMap((layout, i) =>
    checkLayout(job, layout).map((fault) => `layout ${i}: ${fault}`),
  ),
  ...checkCopies(job, answer),
  ...checkPurchase(job, answer),
  ...checkClaims(answer),
]

const checkLayout = (job: SheetJob, layout: SheetLayout): readonly string[] => {
  const stock = job.stocks[layout.stock]
  if (stock === undefined) return [`there is no stock ${layout.stock}`]
  const sheet = {
    xMm: job.trimMm,
    yMm: job.trimMm,
    lengthMm: stock.lengthMm - 2 * job.trimMm,
    widthMm: stock.widthMm - 2 * job.trimMm,
  }
  const most = job.stages === 'any' ? Infinity : job.stages
  // Places alone don't tell which cuts were made to carry the pieces, which are no stages.
  const fromPlaces = job.carry === undefined ? most : Infinity
  const sawn = replayCuts(layout.root, { sheet, kerfMm: job.kerfMm, carry: job.carry })
  return [
    ...(Number.isInteger(layout.count) && layout.count > 0 ? [] : [`${layout.count} sheets`]),
    ...(layout.pieces.length > 0 ? [] : ['a sheet without a piece']),
    ...layout.pieces.flatMap((piece) => checkPiece(job, piece)),
    ...checkPlaces(layout.pieces, { sheet, kerfMm: job.kerfMm, stages: fromPlaces }),
    ...sawn.faults,
    ...(sawn.stages <= most ? [] : [`${sawn.stages} stages of ${most}`]),
    ...(sawn.stages === layout.stages ? [] : [`said to have ${layout.stages} stages`]),
    ...checkSamePieces(sawn.pieces, layout.pieces),
    ...checkOffcuts(layout, sawn.offcuts),
  ]
}

const checkPiece = (job: SheetJob, piece: SheetPiece): readonly string[] => {
  const part = job.parts[piece.part]
  if (part === undefined) return [`there is no part ${piece.part}`]
  const [length, width] = piece.turned
    ? [part.widthMm, part.lengthMm]
    : [part.lengthMm, part.widthMm]
  const place = { xMm: piece.xMm, yMm: piece.yMm, lengthMm: length, widthMm: width }
  return [
    ...(piece.turned && !part.mayTurn ? [`part ${piece.part} may not turn`] : []),
    ...(isAlike(place, piece)
      ? []
      : [`part ${piece.part} is ${piece.lengthMm} by ${piece.widthMm}, not ${length} by ${width}`]),
  ]
}

/** The tree and the list must name the same pieces at the same places. */
const checkSamePieces = (
  sawn: readonly SheetPiece[],
  listed: readonly SheetPiece[],
): readonly string[] => {
  if (sawn.length !== listed.length) return [`${sawn.length} pieces sawn, ${listed.length} listed`]
  const left = [...listed]
  return sawn.flatMap((piece) => {
    const same = left.findIndex(
      (other) =>
        other.part === piece.part && other.turned === piece.turned && isAlike(other, piece),
    )
    if (same < 0) return [`part ${piece.part} is not listed where it is sawn`]
    left.splice(same, 1)
    return []
  })
}

const checkOffcuts = (
  { offcuts }: SheetLayout,
  sawn: SheetLayout['offcuts'],
): readonly string[] => {
  const areas = offcuts.map(({ lengthMm, widthMm }) => lengthMm * widthMm)
  const isSorted = areas.every((area, i) => i === 0 || area <= (areas[i - 1] ?? 0) * (1 + 1e-9))
  return [
    ...(isSorted ? [] : ['offcuts not largest first']),
    ...offcuts.flatMap((offcut) =>
      sawn.some((other) => isAlike(other, offcut)) ? [] : ['an offcut that is not sawn'],
    ),
    ...sawn.flatMap((other) =>
      Math.min(other.lengthMm, other.widthMm) < 1 || offcuts.some((o) => isAlike(o, other))
        ? []
        : ['an offcut that is not listed'],
    ),
  ]
}

const checkCopies = (job: SheetJob, { layouts }: SheetAnswer): readonly string[] =>
  job.parts.flatMap(({ count }, part) => {
    const made = layouts.reduce(
      (sum, l) => sum + l.count * l.pieces.filter((piece) => piece.part === part).length,
      0,
    )
    return made === count ? [] : [`part ${part} is cut ${made} times, not ${count}`]
  })

const checkPurchase = (job: SheetJob, answer: SheetAnswer): readonly string[] => {
  const bought = job.stocks.map((_, stock) =>
    answer.layouts.reduce((sum, l) => sum + (l.stock === stock ? l.count : 0), 0),
  )
  const price = job.stocks.reduce((sum, stock, i) => sum + stock.price * (bought[i] ?? 0), 0)
  const sheets = answer.layouts.reduce((sum, { count }) => sum + count, 0)
  return [
    ...job.stocks.flatMap(({ count = Infinity }, i) =>
      (bought[i] ?? 0) > count ? [`${bought[i]} of stock ${i}, but there are ${count}`] : [],
    ),
    ...(isSamePrice(price, answer.price) ? [] : [`price ${answer.price}, not ${price}`]),
    ...(sheets === answer.sheets ? [] : [`${answer.sheets} sheets, not ${sheets}`]),
  ]
}

const checkClaims = ({ price, bound, proven, boundBy }: SheetAnswer): readonly string[] => [
  ...(bound <= price + EVEN_PRICE && bound >= 0 ? [] : [`bound ${bound}, price ${price}`]),
  ...(proven === isSamePrice(bound, price) ? [] : [`proven ${proven} at ${bound} of ${price}`]),
  ...(boundBy === '' ? ['a bound by nothing'] : []),
]

const isSamePrice = (a: number, b: number): boolean => Math.abs(a - b) <= EVEN_PRICE
