import type { Design } from '../../../design/schema.ts'

/** A board's or a part's cross-section. */
export interface Section {
  readonly thicknessMm: number
  readonly widthMm: number
}

/** How many parts come side by side from one board's cross-section. */
export interface Ripped {
  /** Strips from the width. */
  readonly across: number
  /** Strips from the thickness. */
  readonly layers: number
  /** What is planed off each part's thickness; a little below 0 within the tolerance. */
  readonly planedMm: number
}

/**
 * How parts of a section come from a board, with the saw that there is; undefined when they do not.
 * A table saw rips strips and splits narrow ones flat; a circular saw rips strips; by hand a board is
 * only cut to length, so it must be of the part's own section.
 */
export const ripBoard = (
  board: Section,
  part: Section & { readonly parts: number },
  shop: Design['shop'],
): Ripped | undefined => {
  if (!isLargeEnough(board, part)) return undefined
  const { tools, kerfMm } = shop
  if (tools === 'hand-tools') {
    const planedMm = board.thicknessMm - part.thicknessMm
    const isOwnSection = planedMm <= HAND_FIT_MM && board.widthMm - part.widthMm <= HAND_FIT_MM
    return isOwnSection ? { across: 1, layers: 1, planedMm } : undefined
  }
  const across = countFitting(board.widthMm, part.widthMm, kerfMm)
  const canSplit =
    tools === 'table-saw' && part.widthMm <= DEPTH_OF_CUT_MM && part.parts >= WORTH_SPLITTING
  const betweenMm = kerfMm + 2 * FACE_MM
  const most = canSplit ? countFitting(board.thicknessMm, part.thicknessMm, betweenMm) : 1
  const layers = Math.min(most, MOST_LAYERS)
  return { across, layers, planedMm: board.thicknessMm / layers - part.thicknessMm }
}

/** Whether a part's section fits into a board's, whatever it takes to get it out. */
export const isLargeEnough = (board: Section, part: Section): boolean =>
  board.thicknessMm - part.thicknessMm >= -SHORTFALL_MM &&
  board.widthMm - part.widthMm >= -SHORTFALL_MM

/**
 * A part may be this much larger than the board, so that an 89 mm rail still comes from a 2x4
 * (88.9). Less than the 0.3 mm a rip fence repeats to (shop custom, from memory).
 */
const SHORTFALL_MM = 0.2

/** What a hand plane takes off in reasonable time (common practice). */
const HAND_FIT_MM = 2

/** Planed off each face that was sawn when a strip was split (planer allowance, shop custom). */
const FACE_MM = 1.5

/** The deepest strip that the blade of a usual table saw splits in one go (from memory: 10 in blade). */
const DEPTH_OF_CUT_MM = 75

/** Fewer parts do not earn the set-up: they are planed down from a thicker board (common practice). */
const WORTH_SPLITTING = 4

/** More layers than this wander too far to be planed straight (common practice). */
const MOST_LAYERS = 3

const countFitting = (wholeMm: number, eachMm: number, betweenMm: number): number =>
  Math.max(1, Math.floor((wholeMm + SHORTFALL_MM + betweenMm + 1e-9) / (eachMm + betweenMm)))
