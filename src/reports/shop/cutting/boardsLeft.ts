import type { Design } from '../../../design/schema.ts'
import type { BoardOption } from './boardsFor.ts'

/** What is left of the boards that are counted, while rows choose theirs one after another. */
export interface BoardsLeft {
  /** How many of the lengths come from free boards, and whether all can be had at all. */
  readonly tryTake: (option: BoardOption, lengthMm: number, count: number) => Taken
  readonly take: (option: BoardOption, lengthMm: number, count: number) => void
  /** Whether boards of that section are cut already. */
  readonly isChosen: (option: BoardOption) => boolean
}

export interface Taken {
  readonly placed: number
  readonly isEnough: boolean
}

/** Pieces of counted boards, what is left of each. */
interface Piece {
  leftMm: number
  readonly isFree: boolean
}

/**
 * Keeps count of boards by first fit, longest pieces asked for first or not: what it grants can surely
 * be cut, though a better plan may need fewer boards.
 */
export const createBoardsLeft = ({ endTrimMm, kerfMm }: Design['shop']): BoardsLeft => {
  const pieces = new Map<BoardOption, Piece[]>()
  const chosen = new Set<BoardOption>()

  const piecesOf = (option: BoardOption): Piece[] => {
    const before = pieces.get(option)
    if (before !== undefined) return before
    const made = option.stocks.flatMap(({ count = 0, lengthMm, price }) =>
      // The last piece needs no saw cut behind it.
      Array.from({ length: count }, () => ({
        leftMm: lengthMm - endTrimMm + kerfMm,
        isFree: price === 0,
      })),
    )
    made.sort((a, b) => Number(b.isFree) - Number(a.isFree) || a.leftMm - b.leftMm)
    pieces.set(option, made)
    return made
  }

  const lay = (list: Piece[], lengthMm: number, count: number) => {
    const eachMm = lengthMm + kerfMm
    let [free, bought] = [0, 0]
    for (const piece of list) {
      const fitting = Math.floor((piece.leftMm + 1e-6) / eachMm)
      const taken = Math.min(fitting, count - free - bought)
      if (taken <= 0) continue
      piece.leftMm -= taken * eachMm
      if (piece.isFree) free += taken
      else bought += taken
    }
    return { free, bought }
  }

  const isUnlimited = ({ stocks }: BoardOption, lengthMm: number): boolean =>
    stocks.some((stock) => stock.count === undefined && stock.lengthMm - endTrimMm >= lengthMm)

  return {
    tryTake: (option, lengthMm, count) => {
      const unlimited = isUnlimited(option, lengthMm)
      const list = piecesOf(option)
      if (list.length === 0) return { placed: 0, isEnough: unlimited }
      const copy = list.map((piece) => ({ ...piece }))
      const { free, bought } = lay(copy, lengthMm, count)
      return { placed: free, isEnough: unlimited || free + bought === count }
    },
    take: (option, lengthMm, count) => {
      lay(piecesOf(option), lengthMm, count)
      chosen.add(option)
    },
    isChosen: (option) => chosen.has(option),
  }
}
