import type {
  CuttingPlan,
  LumberGroup,
  SheetGroup,
} from '../../reports/shop/cutting/cuttingPlan.ts'
import type { LumberResult } from '../../solvers/cutting/lumber/lumberJob.ts'
import type { SheetLayout, SheetResult } from '../../solvers/cutting/sheets/sheetJob.ts'
import { formatLength } from '../../units/length.ts'
import { type DrawingItem, LABEL_SIZE_MM, type PaperPoint, textItem } from '../drawing.ts'
import { boardStrip } from '../shop/boardStrip.ts'
import { cutOrder } from '../shop/cutOrder.ts'
import { proofWords } from '../shop/moneyWords.ts'
import { sheetPlanItems } from '../shop/sheetPlanItems.ts'
import { LINE_SPACING } from '../type/typesetter.ts'
import { type Block, heading, paragraph, strips } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'
import type { Strip } from './strip.ts'

/** Which piece comes out of which board and sheet, drawn to scale. Nothing until there is a plan. */
export const cuttingPages = (content: SheetContent): readonly SheetPage[] => {
  const { plan, cutting } = content.report.shop
  if (plan === undefined) return []
  const problems = cutting.problems.map(({ labels, message, remedies }) =>
    paragraph(`${labels.join(', ')}: ${message} ${remedies.map((r) => r.text).join(' ')}`),
  )
  const boards = [
    ...(problems.length > 0 ? [heading('Not in the plans'), ...problems] : []),
    heading('Cutting boards'),
    paragraph(BOARD_WORDS),
    ...plan.jobs.lumber.flatMap((group, i) => boardBlocks(content, group, plan.lumber[i])),
  ]
  const sheets = sheetBlocks(content, plan)
  return [
    ...pagesOf(content, 'Cutting boards', boards),
    ...pagesOf(content, 'Cutting sheets', sheets),
  ]
}

const BOARD_WORDS =
  'Each bar is a board, cut from the left; its pieces are to scale along the board. The saw cut between ' +
  'pieces is the width of your blade. Hatched wood is cut off to start square, or left over.'

const pagesOf = (
  { paper, type }: SheetContent,
  title: string,
  blocks: readonly Block[],
): readonly SheetPage[] =>
  blocks.length === 0
    ? []
    : flowBlocks(blocks, paper.content, type).map((items) => ({ title, scale: '', items }))

const boardBlocks = (
  { design, paper, type, units }: SheetContent,
  group: LumberGroup,
  result: LumberResult | undefined,
): readonly Block[] => {
  const title = heading(`${group.materialName}, ${group.section}`)
  if (result?.kind !== 'plan') return [title, paragraph(result?.message ?? NOT_PLANNED)]
  const longestMm = Math.max(...group.job.stocks.map((stock) => stock.lengthMm))
  const look = { area: paper.content, longestMm, unit: units.length, type }
  return [
    title,
    paragraph(proofWords(result, design.shop.currency)),
    strips(...result.patterns.map((pattern) => boardStrip(group, pattern, look))),
  ]
}

const NOT_PLANNED = 'These boards are not planned yet.'

const sheetBlocks = (content: SheetContent, plan: CuttingPlan): readonly Block[] => {
  if (plan.jobs.sheets.length === 0) return []
  const cells = plan.jobs.sheets.flatMap((group, i) => sheetCells(content, group, plan.sheets[i]))
  return [
    heading('Cutting sheets'),
    paragraph(
      'Every cut runs from edge to edge of the piece it divides. Cut in the order of the list; each ' +
        'figure is measured from the edge nearest the sheet’s corner. Factory edges are trimmed first.',
    ),
    strips(...chunks(cells, ACROSS).map((row) => cellRow(content, row))),
  ]
}

const ACROSS = 2
const GUTTER = 9
const LINE = LABEL_SIZE_MM * LINE_SPACING

/** One sheet's plan with what belongs to it, to be set beside another. */
interface Cell {
  readonly heightMm: number
  readonly draw: (at: PaperPoint) => readonly DrawingItem[]
}

const cellWidth = ({ paper }: SheetContent): number =>
  (paper.content.x1 - paper.content.x0 - GUTTER * (ACROSS - 1)) / ACROSS

const cellRow = (content: SheetContent, cells: readonly Cell[]): Strip => ({
  heightMm: Math.max(...cells.map((cell) => cell.heightMm)) + 4,
  draw: (y) =>
    cells.flatMap((cell, i) =>
      cell.draw({ x: content.paper.content.x0 + i * (cellWidth(content) + GUTTER), y }),
    ),
})

const sheetCells = (
  content: SheetContent,
  group: SheetGroup,
  result: SheetResult | undefined,
): readonly Cell[] => {
  const thick = formatLength(group.thicknessMm, content.units.length, { withUnit: true })
  const name = `${group.materialName}, ${thick}`
  if (result?.kind !== 'plan') return [wordCell(content, [name, result?.message ?? NOT_PLANNED])]
  const words = [name, proofWords(result, content.design.shop.currency)]
  return result.layouts.map((layout, i) =>
    layoutCell(content, { group, layout, words: i === 0 ? words : [name] }),
  )
}

const wordCell = (content: SheetContent, texts: readonly string[]): Cell => {
  const lines = texts.flatMap((text, i) =>
    content.type
      .wrap(content.type.clean(text).text, wordStyle(i), cellWidth(content))
      .map((line) => ({ line, weight: wordStyle(i).weight })),
  )
  return {
    heightMm: lines.length * LINE,
    draw: ({ x, y }) =>
      lines.map(({ line, weight }, i) =>
        textItem({ x, y: y + LABEL_SIZE_MM + i * LINE }, line, { weight }),
      ),
  }
}

/** The name of what is cut stands out from the words below it. */
const wordStyle = (index: number) =>
  ({ sizeMm: LABEL_SIZE_MM, weight: index === 0 ? 'semibold' : 'regular' }) as const

const MOST_HEIGHT = 64

const layoutCell = (
  content: SheetContent,
  {
    group,
    layout,
    words,
  }: {
    readonly group: SheetGroup
    readonly layout: SheetLayout
    readonly words: readonly string[]
  },
): Cell => {
  const { type, units } = content
  const show = (mm: number) => formatLength(mm, units.length)
  const stock = group.job.stocks[layout.stock] ?? { lengthMm: 1, widthMm: 1 }
  const size = `${layout.count} × ${show(stock.lengthMm)} × ${show(stock.widthMm)} ${units.length}`
  const head = wordCell(content, [...words, size])
  const width = cellWidth(content)
  const scale = Math.min(width / stock.lengthMm, MOST_HEIGHT / stock.widthMm)
  const cuts = cutOrder(layout.root).map(
    ({ number, along, fromEdgeMm, isCarry }) =>
      `${number}  ${along === 'length' ? 'along' : 'across'} at ${show(fromEdgeMm)}${isCarry ? ', at the shop' : ''}`,
  )
  const columns = Math.max(1, Math.floor(width / CUT_COLUMN))
  const lines = Math.ceil(cuts.length / columns)
  const below = head.heightMm + 2 + stock.widthMm * scale + 2
  return {
    heightMm: below + lines * LINE,
    draw: ({ x, y }) => [
      ...head.draw({ x, y }),
      ...sheetPlanItems(group, layout, {
        at: { x, y: y + head.heightMm + 2 },
        scale,
        unit: units.length,
        type,
      }),
      ...cuts.map((text, i) =>
        textItem(
          {
            x: x + Math.floor(i / lines) * CUT_COLUMN,
            y: y + below + LABEL_SIZE_MM + (i % lines) * LINE,
          },
          text,
        ),
      ),
    ],
  }
}

const CUT_COLUMN = 60

const chunks = <T>(all: readonly T[], size: number): readonly (readonly T[])[] =>
  all.length === 0 ? [] : [all.slice(0, size), ...chunks(all.slice(size), size)]
