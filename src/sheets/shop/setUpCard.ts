import type { SetUp } from '../../reports/shop/setups/setUpReport.ts'
import type { LengthUnit } from '../../units/length.ts'
import { type DrawingItem, LABEL_SIZE_MM, type PaperPoint, textItem } from '../drawing.ts'
import { LINE_SPACING, type Typesetter } from '../type/typesetter.ts'
import { rectangle } from './rectangle.ts'
import { settingWords } from './settingWords.ts'

/** 27 points: to be read at arm's length with dust on the glasses. */
const FIGURE_MM = 9.6
const LINE = LABEL_SIZE_MM * LINE_SPACING
const PAD = 3
const ROW = LINE + 0.9
const TICK_R = 1.7

/** A card that has been measured: its height, and how to draw it with its top left corner at a place. */
export interface LaidCard {
  readonly heightMm: number
  readonly draw: (at: PaperPoint, heightMm: number) => readonly DrawingItem[]
}

/**
 * One setting of one tool as a card to cut out and carry to the machine: the figure large, what to cut
 * at it, each row with a circle to tick, and what to mind.
 */
export const laySetUpCard = (
  setUp: SetUp,
  {
    widthMm,
    unit,
    type,
  }: { readonly widthMm: number; readonly unit: LengthUnit; readonly type: Typesetter },
): LaidCard => {
  const room = widthMm - 2 * PAD
  const body = { sizeMm: LABEL_SIZE_MM, weight: 'regular' } as const
  const wrap = (text: string, width = room) => type.wrap(type.clean(text).text, body, width)
  const figure = type.fit(settingWords(setUp.setting, unit), 'semibold', {
    widthMm: room - 14,
    heightMm: FIGURE_MM * LINE_SPACING,
    sizesMm: [FIGURE_MM, 8.6],
  })
  const above = wrap(`${setUp.tool}; ${setUp.stock}`)
  const further = setUp.further.flatMap((f) => wrap(`${f.name}: ${settingWords(f.setting, unit)}`))
  const rows = setUp.rows.map((row) => ({
    head: `${row.label}  ${row.count} ×`,
    lines: wrap(row.name, room - 34),
  }))
  const advice = [
    ...(setUp.problem === undefined
      ? []
      : [`Your tools can’t make this cut. ${setUp.problem.message} ${setUp.problem.wayOut}`]),
    ...setUp.advice,
  ].flatMap((text) => wrap(text))
  const rowHeights = rows.map(({ lines }) => Math.max(1, lines.length) * LINE + ROW - LINE)
  const heightMm =
    2 * PAD +
    (above.length + further.length + advice.length) * LINE +
    figure.lines.length * figure.sizeMm * LINE_SPACING +
    rowHeights.reduce((sum, h) => sum + h, 0) +
    3
  return {
    heightMm,
    draw: (at, height) => {
      const x = at.x + PAD
      let y = at.y + PAD
      const items: DrawingItem[] = [rectangle(at, { widthMm, heightMm: height }, FRAME)]
      const write = (lines: readonly string[]) => {
        for (const line of lines) {
          items.push(textItem({ x, y: y + LABEL_SIZE_MM }, line, body))
          y += LINE
        }
      }
      items.push(
        textItem({ x: at.x + widthMm - PAD, y: y + FIGURE_MM }, String(setUp.number), {
          sizeMm: 6,
          weight: 'semibold',
          anchor: 'end',
        }),
      )
      for (const line of figure.lines) {
        items.push(
          textItem({ x, y: y + figure.sizeMm }, line, {
            sizeMm: figure.sizeMm,
            weight: 'semibold',
          }),
        )
        y += figure.sizeMm * LINE_SPACING
      }
      write(above)
      write(further)
      y += 1.5
      rows.forEach(({ head, lines }, i) => {
        items.push(tick({ x: x + TICK_R, y: y + LABEL_SIZE_MM - 1.2 }))
        items.push(
          textItem({ x: x + 5.5, y: y + LABEL_SIZE_MM }, head, { weight: 'semibold' }),
          ...lines.map((line, k) =>
            textItem({ x: x + 34, y: y + LABEL_SIZE_MM + k * LINE }, line, body),
          ),
        )
        y += rowHeights[i] ?? ROW
      })
      y += 1.5
      write(advice)
      return items
    },
  }
}

const FRAME = {
  stroke: { weight: 'medium', dash: 'solid' },
  tint: 'none',
  hatch: 'none',
} as const

/** A circle to tick when the row is cut. */
const tick = (middle: PaperPoint): DrawingItem => ({
  kind: 'polygon',
  points: Array.from({ length: 20 }, (_, i) => ({
    x: middle.x + TICK_R * Math.cos((i * Math.PI) / 10),
    y: middle.y + TICK_R * Math.sin((i * Math.PI) / 10),
  })),
  stroke: { weight: 'thin', dash: 'solid' },
  tint: 'none',
  hatch: 'none',
})
