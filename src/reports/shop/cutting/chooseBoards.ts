import type { Design } from '../../../design/schema.ts'
import type { BoardOption } from './boardsFor.ts'
import type { BoardsLeft } from './boardsLeft.ts'
import { isLargeEnough, type Ripped, ripBoard, type Section } from './ripBoard.ts'

/** Parts of one cut list row that are still to be sawn. */
export interface Wanted extends Section {
  /** Along the grain. */
  readonly lengthMm: number
  readonly parts: number
}

export interface BoardChoice extends Ripped {
  readonly option: BoardOption
  /** Lengths of board that are needed. */
  readonly blanks: number
}

/** Why no board does, the nearest first. */
export type BoardLack = 'not-enough' | 'too-long' | 'hand-tools' | 'too-large' | 'no-stock'

/**
 * The section that a row is sawn from: the least planing counts most, then the cost. The first board of
 * a section costs all that a board costs, so rows join others rather than have one bought for them.
 * What is on hand and enough goes before all, unless much would have to be planed off. The boards that
 * are counted are taken from `left`, so what was chosen can be cut.
 */
export const chooseBoards = (
  wanted: Wanted,
  { options, shop, left }: ChooseFrom,
): BoardChoice | BoardLack => {
  let best: Candidate | undefined
  let lack = 0
  for (const option of options) {
    const tried = tryOption(option, wanted, { shop, left })
    if (typeof tried === 'number') lack = Math.max(lack, tried)
    else if (best === undefined || isBetter(tried, best)) best = tried
  }
  if (best === undefined) return LACKS[options.length === 0 ? 0 : lack] ?? 'no-stock'
  left.take(best.option, wanted.lengthMm, best.blanks)
  return { option: best.option, blanks: best.blanks, ...best.ripped }
}

export interface ChooseFrom {
  readonly options: readonly BoardOption[]
  readonly shop: Design['shop']
  readonly left: BoardsLeft
}

interface Candidate {
  readonly option: BoardOption
  readonly blanks: number
  readonly ripped: Ripped
  readonly planing: number
  readonly cost: number
}

/** The farther down, the nearer a row came to being cut. */
const LACKS = ['no-stock', 'too-large', 'hand-tools', 'too-long', 'not-enough'] as const

/** What a row would be sawn from that section, or how far down in `LACKS` it came. */
const tryOption = (
  option: BoardOption,
  wanted: Wanted,
  { shop, left }: Omit<ChooseFrom, 'options'>,
): Candidate | number => {
  if (!isLargeEnough(option, wanted)) return LACKS.indexOf('too-large')
  const ripped = ripBoard(option, wanted, shop)
  if (ripped === undefined) return LACKS.indexOf('hand-tools')
  const blanks = Math.ceil(wanted.parts / (ripped.across * ripped.layers))
  const price = cheapest(option, wanted.lengthMm, shop)
  if (price === undefined) return LACKS.indexOf('too-long')
  const { placed, isEnough } = left.tryTake(option, wanted.lengthMm, blanks)
  if (!isEnough) return LACKS.indexOf('not-enough')
  const share = price.each * (blanks - placed)
  const isFree = placed === blanks
  const cost = isFree || left.isChosen(option) ? share : Math.max(share, price.board)
  return { option, blanks, ripped, planing: planingClass(ripped.planedMm, isFree), cost }
}

const isBetter = (a: Candidate, b: Candidate): boolean =>
  a.planing < b.planing || (a.planing === b.planing && a.cost < b.cost - 1e-9)

/** Both faces planed in one go each (planer custom: 1.5 mm a face). */
const ONE_GO_MM = 3
/** A board on hand may be planed down by two goes. */
const FREE_PLANING_MM = 6

/** How many more goes through the planer than one; what is on hand is worth one more. */
const planingClass = (planedMm: number, isFree: boolean): number => {
  if (isFree && planedMm <= FREE_PLANING_MM) return 0
  return Math.max(0, Math.ceil((planedMm - ONE_GO_MM - 0.01) / ONE_GO_MM))
}

/**
 * The least that one length costs, by its share of the board, and the cheapest board that it comes
 * from; undefined when no board is so long.
 */
const cheapest = (
  { stocks }: BoardOption,
  lengthMm: number,
  { endTrimMm }: Design['shop'],
): { readonly each: number; readonly board: number } | undefined => {
  let [each, board] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY]
  for (const stock of stocks) {
    if (stock.lengthMm - endTrimMm < lengthMm) continue
    each = Math.min(each, (stock.price / stock.lengthMm) * lengthMm)
    board = Math.min(board, stock.price)
  }
  return board === Number.POSITIVE_INFINITY ? undefined : { each, board }
}
