import type { TextWeight } from '../drawing.ts'
import type { FontMetrics } from './fontMetrics.ts'
import { type PrintableText, printableText } from './printableText.ts'

export interface TypeStyle {
  readonly sizeMm: number
  readonly weight: TextWeight
}

/** Type that has been found to fit: its size and its lines. */
export interface FittedText {
  readonly sizeMm: number
  readonly lines: readonly string[]
}

/** Measures and breaks text for paper. All text that goes on a sheet passes `clean` first. */
export interface Typesetter {
  /** Text with a stand-in for each character that either weight of the face lacks. */
  readonly clean: (raw: string) => PrintableText
  /** Width on one line, mm. Kerning is left out; it makes lines a hair shorter, seldom longer. */
  readonly measure: (text: string, style: TypeStyle) => number
  /** Lines no wider than `widthMm`, broken at spaces, and inside a word only if it is too wide alone. */
  readonly wrap: (text: string, style: TypeStyle, widthMm: number) => readonly string[]
  /** The largest of `sizes` (falling) at which the text fits the box; else the last, whatever comes. */
  readonly fit: (text: string, weight: TextWeight, box: FitBox) => FittedText
}

export interface FitBox {
  readonly widthMm: number
  readonly heightMm: number
  readonly sizesMm: readonly number[]
}

/** Baseline to baseline as a multiple of the type size. */
export const LINE_SPACING = 1.34

export const createTypesetter = (faces: Readonly<Record<TextWeight, FontMetrics>>): Typesetter => {
  const covers = (c: number) => faces.regular.covers(c) && faces.semibold.covers(c)
  const measure: Typesetter['measure'] = (text, { sizeMm, weight }) =>
    [...text].reduce((sum, c) => sum + faces[weight].advance(c.codePointAt(0) ?? 0), 0) * sizeMm
  const wrap: Typesetter['wrap'] = (text, style, widthMm) =>
    text.split('\n').flatMap((line) => wrapLine(line, widthMm, (t) => measure(t, style)))
  return {
    clean: (raw) => printableText(raw, covers),
    measure,
    wrap,
    fit: (text, weight, { widthMm, heightMm, sizesMm }) => {
      const tries = sizesMm.map((sizeMm) => ({
        sizeMm,
        lines: wrap(text, { sizeMm, weight }, widthMm),
      }))
      const fitting = tries.find((t) => t.lines.length * t.sizeMm * LINE_SPACING <= heightMm)
      return fitting ?? tries.at(-1) ?? { sizeMm: 1, lines: [] }
    },
  }
}

const wrapLine = (
  line: string,
  width: number,
  measure: (text: string) => number,
): readonly string[] => {
  const lines: string[] = []
  let current = ''
  for (const word of line.split(' ').filter((w) => w !== '')) {
    const longer = current === '' ? word : `${current} ${word}`
    if (measure(longer) <= width) {
      current = longer
      continue
    }
    if (current !== '') lines.push(current)
    const pieces = breakWord(word, width, measure)
    lines.push(...pieces.slice(0, -1))
    current = pieces.at(-1) ?? ''
  }
  return current === '' && lines.length > 0 ? lines : [...lines, current]
}

/** Pieces of a word that each fit, at least one character long; marks stay with their letter. */
const breakWord = (
  word: string,
  width: number,
  measure: (text: string) => number,
): readonly string[] => {
  const pieces: string[] = []
  let current = ''
  for (const letter of word.match(/.\p{M}*/gsu) ?? []) {
    if (current !== '' && measure(current + letter) > width) {
      pieces.push(current)
      current = ''
    }
    current += letter
  }
  return current === '' ? pieces : [...pieces, current]
}
