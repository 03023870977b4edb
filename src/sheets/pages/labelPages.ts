import type { PartLabel } from '../../reports/shop/assembly/assemblyReport.ts'
import {
  type DrawingItem,
  LABEL_SIZE_MM,
  type PaperPoint,
  solidLine,
  textItem,
} from '../drawing.ts'
import { rectangle } from '../shop/rectangle.ts'
import { LINE_SPACING, type Typesetter } from '../type/typesetter.ts'
import { heading, paragraph, strips } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'
import type { Strip } from './strip.ts'

const ACROSS = 4
const LINE = LABEL_SIZE_MM * LINE_SPACING
const LETTER_MM = 11
const PAD = 2.5
const MOST_COPIES = 4

/**
 * Labels to cut out and tape to the parts: letter, up arrow, outside face, hand and mates. Rows of many
 * parts get a few labels; one goes on each stack.
 */
export const labelPages = (content: SheetContent): readonly SheetPage[] => {
  const { report, paper, type } = content
  const labels = report.shop.assembly.labels.flatMap((label) =>
    Array.from({ length: Math.min(label.count, MOST_COPIES) }, () => label),
  )
  if (labels.length === 0) return []
  const area = paper.content
  const widthMm = (area.x1 - area.x0) / ACROSS
  const rows: Strip[] = []
  for (let i = 0; i < labels.length; i += ACROSS) {
    const row = labels.slice(i, i + ACROSS).map((label) => layLabel(label, widthMm, type))
    const heightMm = Math.max(...row.map((laid) => laid.heightMm))
    rows.push({
      heightMm,
      draw: (y) => row.flatMap((laid, k) => laid.draw({ x: area.x0 + k * widthMm, y }, heightMm)),
    })
  }
  const blocks = [
    heading('Labels'),
    paragraph(
      'Cut these out and tape each on its part as soon as it is cut, the arrow the way the part ' +
        `stands in the hive. Of stacks of equal parts there are at most ${MOST_COPIES} labels.`,
    ),
    strips(...rows),
  ]
  return flowBlocks(blocks, area, type).map((items) => ({ title: 'Labels', scale: '', items }))
}

interface LaidLabel {
  readonly heightMm: number
  readonly draw: (at: PaperPoint, heightMm: number) => readonly DrawingItem[]
}

const layLabel = (label: PartLabel, widthMm: number, type: Typesetter): LaidLabel => {
  const body = { sizeMm: LABEL_SIZE_MM, weight: 'regular' } as const
  const wrap = (text: string, width: number) => type.wrap(type.clean(text).text, body, width)
  const letter = { sizeMm: LETTER_MM, weight: 'semibold' } as const
  const beside = type.measure(label.label, letter) + 3
  const hasArrow = label.up !== 'none'
  const name = wrap(label.name, widthMm - 2 * PAD - beside - (hasArrow ? 8 : 0))
  const below = labelWords(label).flatMap((text) => wrap(text, widthMm - 2 * PAD))
  const headMm = Math.max(LETTER_MM + 1, name.length * LINE)
  return {
    heightMm: 2 * PAD + headMm + 1 + below.length * LINE,
    draw: (at, heightMm) => {
      const [x, y] = [at.x + PAD, at.y + PAD]
      return [
        rectangle(at, { widthMm, heightMm }, CUT_LINE),
        textItem({ x, y: y + LETTER_MM * 0.86 }, label.label, letter),
        ...name.map((line, i) =>
          textItem({ x: x + beside, y: y + LABEL_SIZE_MM + i * LINE }, line, body),
        ),
        ...(hasArrow ? upArrow({ x: at.x + widthMm - PAD - 2.5, y }) : []),
        ...below.map((line, i) =>
          textItem({ x, y: y + headMm + 1 + LABEL_SIZE_MM + i * LINE }, line, body),
        ),
      ]
    },
  }
}

const labelWords = ({ up, outside, hand, mates, count }: PartLabel): readonly string[] => [
  ...(hand === 'none' ? [] : [`${hand === 'left' ? 'Left' : 'Right'} hand`]),
  ...(up === 'none' ? [] : [`Up: ${up}`]),
  ...(outside === '' ? [] : [`Outside: ${outside}`]),
  ...(mates.length === 0 ? [] : [`Meets ${mates.join(', ')}`]),
  ...(count > MOST_COPIES ? [`${count} in all`] : []),
]

/** Cut along the dashes. */
const CUT_LINE = {
  stroke: { weight: 'thin', dash: 'hidden' },
  tint: 'none',
  hatch: 'none',
} as const

const upArrow = ({ x, y }: PaperPoint): readonly DrawingItem[] => [
  solidLine('thick', { x, y: y + 10 }, { x, y: y + 0.5 }),
  solidLine('thick', { x: x - 2, y: y + 3.5 }, { x, y: y + 0.5 }),
  solidLine('thick', { x: x + 2, y: y + 3.5 }, { x, y: y + 0.5 }),
]
