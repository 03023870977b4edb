import type { Size } from '../fitScale.ts'

export type PaperName = 'a4' | 'letter'

/** A box on the paper, mm from the top left. */
export interface PaperBox {
  readonly x0: number
  readonly x1: number
  readonly y0: number
  readonly y1: number
}

/** One size of paper laid on its side, as the whole sheet uses it, and what goes where on it. */
export interface Paper {
  readonly name: PaperName
  readonly size: Size
  readonly frame: PaperBox
  readonly titleBlock: PaperBox
  /** Beside the title block: the check bar or a word of advice. */
  readonly foot: PaperBox
  /** Everything else. */
  readonly content: PaperBox
  /** The bar to measure with a rule after printing. */
  readonly checkBar: { readonly lengthMm: number; readonly words: string; readonly parts: number }
  readonly projection: 'first-angle' | 'third-angle'
}

/** ISO 216 and ANSI Y14.1 (US Letter). */
const SIZE: Readonly<Record<PaperName, Size>> = {
  a4: { widthMm: 297, heightMm: 210 },
  letter: { widthMm: 279.4, heightMm: 215.9 },
}

/** ISO 5457: 20 mm to file at the left, 10 mm on the other sides. */
const FILING_MARGIN = 20
const MARGIN = 10
const INSET = 5
const BLOCK_HEIGHT = 25
const FOOT_WIDTH = 113

/**
 * The sheet's paper. A4 sheets are in first-angle projection and have a bar of 100 mm; Letter sheets in
 * third-angle and a bar of 4 inches, as readers of each expect.
 */
export const paperOf = (name: PaperName): Paper => {
  const size = SIZE[name]
  const frame = {
    x0: FILING_MARGIN,
    x1: size.widthMm - MARGIN,
    y0: MARGIN,
    y1: size.heightMm - MARGIN,
  }
  const blockTop = frame.y1 - BLOCK_HEIGHT
  return {
    name,
    size,
    frame,
    titleBlock: { x0: frame.x0 + FOOT_WIDTH, x1: frame.x1, y0: blockTop, y1: frame.y1 },
    foot: { x0: frame.x0 + INSET, x1: frame.x0 + FOOT_WIDTH - 3, y0: blockTop, y1: frame.y1 },
    content: {
      x0: frame.x0 + INSET,
      x1: frame.x1 - INSET,
      y0: frame.y0 + INSET,
      y1: blockTop - 3,
    },
    checkBar:
      name === 'a4'
        ? { lengthMm: 100, words: '100 mm', parts: 10 }
        : { lengthMm: 101.6, words: '4 in', parts: 4 },
    projection: name === 'a4' ? 'first-angle' : 'third-angle',
  }
}

export const boxSize = (b: PaperBox): Size => ({ widthMm: b.x1 - b.x0, heightMm: b.y1 - b.y0 })
