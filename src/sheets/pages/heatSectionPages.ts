import type { HeatFieldAnswer } from '../../reports/heat/field/heatFieldAnswer.ts'
import type { DrawingItem } from '../drawing.ts'
import { fitsIn } from '../fitScale.ts'
import { deriveHeatScale } from '../heat/heatBands.ts'
import { heatLegend, LEGEND_SIZE } from '../heat/heatLegend.ts'
import { fitHeatSection } from '../heat/heatSection.ts'
import { placeDrawing, type ViewDrawing } from '../view.ts'
import type { CutPlane } from '../views/cutSolid.ts'
import { sectionPlace } from '../views/sectionPlace.ts'
import { paragraph } from './blocks.ts'
import { checkBar } from './checkBar.ts'
import { flowBlocks } from './flowBlocks.ts'
import { placeRow, rowSize, scaleWords } from './packViews.ts'
import { boxSize } from './paper.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

/** Kept free under the drawings for the legend and the words beside it. */
const FOOT_ROOM = 24
const GUTTER = 10

/**
 * The hive in section across and along with its isotherms, as on the design's cold night: on one page
 * where that loses no scale, else on two.
 */
export const heatSectionPages = (
  content: SheetContent,
  field: HeatFieldAnswer,
): readonly SheetPage[] => {
  const { hive, units, paper } = content
  const whole = boxSize(paper.content)
  const area = { ...whole, heightMm: whole.heightMm - FOOT_ROOM }
  const question = { answer: field, temperatures: nightOf(content), units }
  const draw = (plane: CutPlane) => fitHeatSection(hive, plane, question, area)
  const drawings = [draw({ axis: 'x', at: sectionPlace(hive) }), draw({ axis: 'z', at: 0 })]
  const rows = fitsIn(rowSize(drawings), area) ? [drawings] : drawings.map((d) => [d])
  return rows.map((row) => pageOf(row, content))
}

const nightOf = ({ design }: SheetContent) => ({
  outsideC: design.site.coldNightC,
  insideC: design.colony.cavityAirC,
})

const pageOf = (row: readonly ViewDrawing[], content: SheetContent): SheetPage => ({
  title: 'Temperatures on a cold night',
  scale: scaleWords(row),
  items: [
    ...placeRow(row, content.paper.content),
    ...footItems(content, content.paper.content.y0 + rowSize(row).heightMm + 5),
    ...checkBar(content.paper),
  ],
})

const HOW_TO_READ =
  'Each line joins places of one temperature. Where lines crowd together, the heat is held back; where ' +
  'they spread apart, in rails, corners and edges, it gets away more easily. Air, and frames and boards ' +
  'in it, are left white.'

/** The legend, and beside it what the lines say. */
const footItems = (content: SheetContent, y: number): readonly DrawingItem[] => {
  const { paper, type, units } = content
  const night = nightOf(content)
  const scale = deriveHeatScale(night, units.temperature)
  const items = heatLegend(scale, night, units.temperature)
  const words = { ...paper.content, x0: paper.content.x0 + LEGEND_SIZE.widthMm + GUTTER, y0: y }
  return [
    ...placeDrawing({ ...LEGEND_SIZE, items }, { x: paper.content.x0, y }),
    ...(flowBlocks([paragraph(HOW_TO_READ)], words, type)[0] ?? []),
  ]
}
