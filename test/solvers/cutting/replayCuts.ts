import type {
  CutNode,
  SheetPiece,
  SheetRect,
} from '../../../src/solvers/cutting/sheets/sheetJob.ts'
import { describeRect, EVEN_MM, isAlike } from './rects.ts'

type Cut = Extract<CutNode, { readonly kind: 'cut' }>

interface Shop {
  /** What the first cut begins with: the sheet without its trimmed edges. */
  readonly sheet: SheetRect
  readonly kerfMm: number
  readonly carry: { readonly lengthMm: number; readonly widthMm: number } | undefined
}

interface Sawn {
  readonly faults: readonly string[]
  /** What comes off the saw, in the order of the cuts. */
  readonly pieces: readonly SheetPiece[]
  readonly offcuts: readonly SheetRect[]
  /** Changes of direction, with the first cuts as 1; a trimming last cut is none after that. */
  readonly stages: number
}

/**
 * Saws a sheet as its tree says. Every cut goes from edge to edge of the rectangle in hand and turns a
 * strip as wide as the kerf to dust; what it leaves is worked out here and held against the tree.
 */
export const replayCuts = (root: CutNode, shop: Shop): Sawn => {
  const faults: string[] = []
  const pieces: SheetPiece[] = []
  const offcuts: SheetRect[] = []
  let stages = 0

  const saw = (node: CutNode, inHand: SheetRect, above: Above): void => {
    if (!isAlike(node.rect, inHand)) {
      faults.push(`${describeRect(node.rect)} in the tree, ${describeRect(inHand)} in the hand`)
    }
    if (node.kind === 'cut') cut(node, inHand, above)
    else if (node.kind === 'offcut') offcuts.push(inHand)
    else {
      pieces.push(node.piece)
      if (!isAlike(node.piece, inHand)) {
        faults.push(`part ${node.piece.part} is not as large as ${describeRect(inHand)}`)
      }
    }
  }

  const cut = (node: Cut, inHand: SheetRect, above: Above): void => {
    const halves = divide(node, inHand, shop.kerfMm)
    if (halves === undefined) {
      faults.push(`a cut at ${node.atMm} misses ${describeRect(inHand)}`)
      return
    }
    if (node.isCarry && !above.isCarry) faults.push('a carry cut after other cuts')
    const stage = node.along === above.along ? above.stage : above.stage + 1
    if (!node.isCarry && !(stage > 1 && isTrimming(node))) stages = Math.max(stages, stage)
    const below = node.isCarry ? START : { stage, along: node.along, isCarry: false }
    saw(node.first, halves.first, below)
    saw(node.second, halves.second, below)
  }

  saw(root, shop.sheet, START)
  return { faults: [...faults, ...checkCarry(root, shop)], pieces, offcuts, stages }
}

/** What led to a node. */
interface Above {
  readonly stage: number
  readonly along: Cut['along'] | undefined
  /** All cuts so far are to make pieces that can be carried. */
  readonly isCarry: boolean
}

/** Each piece that was carried begins anew: cuts to carry are no stage. */
const START: Above = { stage: 0, along: undefined, isCarry: true }

/** The two sides of a cut; the one beyond it is empty when the kerf eats the last of it. */
const divide = (
  { along, atMm }: Cut,
  rect: SheetRect,
  kerfMm: number,
): { readonly first: SheetRect; readonly second: SheetRect } | undefined => {
  const isRip = along === 'length'
  const from = isRip ? rect.yMm : rect.xMm
  const to = from + (isRip ? rect.widthMm : rect.lengthMm)
  if (!(atMm > from + EVEN_MM && atMm < to - EVEN_MM)) return undefined
  const beyond = Math.min(to, atMm + kerfMm)
  return isRip
    ? {
        first: { ...rect, widthMm: atMm - from },
        second: { ...rect, yMm: beyond, widthMm: to - beyond },
      }
    : {
        first: { ...rect, lengthMm: atMm - from },
        second: { ...rect, xMm: beyond, lengthMm: to - beyond },
      }
}

/** A last cut, which frees one part from what is left beside it. */
const isTrimming = ({ first, second }: Cut): boolean =>
  (first.kind === 'part' && second.kind === 'offcut') ||
  (first.kind === 'offcut' && second.kind === 'part')

/** Where there is a size to carry, whatever the carry cuts leave must fit it one way or the other. */
const checkCarry = (node: CutNode, { carry }: Shop): readonly string[] => {
  if (carry === undefined) return hasCarryCut(node) ? ['a carry cut that nobody asked for'] : []
  return carried(node).flatMap(({ rect: { lengthMm, widthMm } }) =>
    Math.max(lengthMm, widthMm) <= Math.max(carry.lengthMm, carry.widthMm) + EVEN_MM &&
    Math.min(lengthMm, widthMm) <= Math.min(carry.lengthMm, carry.widthMm) + EVEN_MM
      ? []
      : [`${lengthMm} by ${widthMm} is too large to carry`],
  )
}

const carried = (node: CutNode): readonly CutNode[] =>
  node.kind === 'cut' && node.isCarry ? [...carried(node.first), ...carried(node.second)] : [node]

const hasCarryCut = (node: CutNode): boolean =>
  node.kind === 'cut' && (node.isCarry || hasCarryCut(node.first) || hasCarryCut(node.second))
