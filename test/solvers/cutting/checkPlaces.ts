import type { SheetPiece, SheetRect } from '../../../src/solvers/cutting/sheets/sheetJob.ts'
import { EVEN_MM, extentOf } from './rects.ts'

type Axis = 'length' | 'width'

interface Sheet {
  /** The sheet without its trimmed edges. */
  readonly sheet: SheetRect
  readonly kerfMm: number
  /** Most stages, infinite where any number is allowed. */
  readonly stages: number
}

/** What is wrong with the places of one sheet's pieces, without a look at how it is cut. */
export const checkPlaces = (
  pieces: readonly SheetPiece[],
  { sheet, kerfMm, stages }: Sheet,
): readonly string[] => {
  const least = leastStages(pieces, kerfMm)
  return [
    ...pieces.flatMap((piece) => (isInside(piece, sheet) ? [] : [`part ${piece.part} sticks out`])),
    ...pieces.flatMap((piece, i) =>
      pieces
        .slice(i + 1)
        .flatMap((other) =>
          isApart(piece, other, kerfMm)
            ? []
            : [`parts ${piece.part} and ${other.part} leave no room for the saw`],
        ),
    ),
    ...(least === undefined ? ['no cut from edge to edge parts the pieces'] : []),
    ...(least !== undefined && least > stages ? [`takes ${least} stages of ${stages}`] : []),
  ]
}

const isInside = (piece: SheetRect, sheet: SheetRect): boolean =>
  (['length', 'width'] as const).every((axis) => {
    const [own, whole] = [extentOf(piece, axis), extentOf(sheet, axis)]
    return own.from >= whole.from - EVEN_MM && own.to <= whole.to + EVEN_MM
  })

/** True when a saw fits between two pieces on at least one axis. */
const isApart = (a: SheetRect, b: SheetRect, kerfMm: number): boolean =>
  (['length', 'width'] as const).some((axis) => {
    const [one, other] = [extentOf(a, axis), extentOf(b, axis)]
    return Math.max(one.from - other.to, other.from - one.to) >= kerfMm - EVEN_MM
  })

/**
 * The fewest changes of direction, the first cuts as 1, that part all pieces when a last trimming cut
 * for each is free; `undefined` where edge to edge cuts can't part them. To cut wherever possible
 * before turning is best, since fewer pieces never take more stages than more of them.
 */
const leastStages = (pieces: readonly SheetRect[], kerfMm: number): number | undefined => {
  if (pieces.length <= 1) return 0
  return smaller(stagesFrom(pieces, 'length', kerfMm), stagesFrom(pieces, 'width', kerfMm))
}

/** The same with first cuts that divide the given axis; none when they part nothing. */
const stagesFrom = (
  pieces: readonly SheetRect[],
  axis: Axis,
  kerfMm: number,
): number | undefined => {
  const groups = part(pieces, axis, kerfMm)
  if (groups.length === 1) return undefined
  let most = 0
  for (const group of groups) {
    const across = axis === 'length' ? 'width' : 'length'
    const stages = group.length <= 1 ? 0 : stagesFrom(group, across, kerfMm)
    if (stages === undefined) return undefined
    most = Math.max(most, stages)
  }
  return most + 1
}

const smaller = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? (a ?? b) : Math.min(a, b)

/** Groups of pieces between which a saw can pass straight through. */
const part = (
  pieces: readonly SheetRect[],
  axis: Axis,
  kerfMm: number,
): readonly (readonly SheetRect[])[] => {
  const groups: SheetRect[][] = []
  let end = -Infinity
  const inOrder = pieces.toSorted((a, b) => extentOf(a, axis).from - extentOf(b, axis).from)
  for (const piece of inOrder) {
    const { from, to } = extentOf(piece, axis)
    if (from >= end + kerfMm - EVEN_MM) groups.push([piece])
    else groups.at(-1)?.push(piece)
    end = Math.max(end, to)
  }
  return groups
}
