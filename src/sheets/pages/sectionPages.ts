import type { Size } from '../fitScale.ts'
import { placeDrawing, type ViewDrawing } from '../view.ts'
import { fitView } from '../views/composeView.ts'
import { crossSection } from '../views/crossSection.ts'
import { wallSection } from '../views/wallSection.ts'
import { type Block, heading, paragraph } from './blocks.ts'
import { checkBar } from './checkBar.ts'
import { flowBlocks } from './flowBlocks.ts'
import { panelRows } from './panelRows.ts'
import { boxSize, type PaperBox } from './paper.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

/**
 * The section across the whole hive with the layers of walls, lid and floor listed beside it, then the
 * front wall at its top and at its foot, larger.
 */
export const sectionPages = (content: SheetContent): readonly SheetPage[] => {
  const { hive, units, paper } = content
  const area = boxSize(paper.content)
  return [
    wholeSection(content),
    detailPage('Wall top, lid and roof', wallSection(hive, 'top', units, area), content),
    detailPage('Wall foot and floor', wallSection(hive, 'foot', units, area), content),
  ]
}

const TEXT_WIDTH = 96
const GUTTER = 8

const wholeSection = (content: SheetContent): SheetPage => {
  const { hive, units, paper, type } = content
  const spec = crossSection(hive, units)
  const box = paper.content
  const area = { widthMm: box.x1 - box.x0 - TEXT_WIDTH - GUTTER, heightMm: box.y1 - box.y0 }
  const drawing = fitView(spec, area)
  const text = { ...box, x0: box.x1 - TEXT_WIDTH }
  return {
    title: 'Section across the hive',
    scale: `1:${drawing.scaleDenominator}`,
    items: [
      ...placeDrawing(drawing, {
        x: box.x0 + Math.max(0, (area.widthMm - drawing.widthMm) / 2),
        y: box.y0,
      }),
      ...(flowBlocks(layerBlocks(content), text, type)[0] ?? []),
      ...checkBar(paper),
    ],
  }
}

/** What walls, lid and floor are made of, from inside to outside. */
const layerBlocks = ({ hive, units }: SheetContent): readonly Block[] => {
  const panels = ['front-wall', 'lid', 'floor'] as const
  return [
    heading('Layers, from inside to outside'),
    {
      kind: 'table',
      columns: [
        { title: 'Panel', share: 16, weight: 'semibold' },
        { title: 'Layer', share: 52 },
        { title: units.length === 'mm' ? 'mm' : 'in', share: 14, anchor: 'end' },
      ],
      rows: hive.panels
        .filter((p) => panels.some((id) => id === p.id))
        .flatMap((p) => panelRows(p, units)),
    },
    paragraph(
      'The section goes through the middle of a frame, seen from the right-hand end with the front ' +
        'at the left. Only what the cut goes through is drawn; heights are from the floor.',
    ),
  ]
}

const detailPage = (title: string, drawing: ViewDrawing, { paper }: SheetContent): SheetPage => ({
  title,
  scale: `1:${drawing.scaleDenominator}`,
  items: [...placeDrawing(drawing, centre(drawing, paper.content)), ...checkBar(paper)],
})

const centre = (size: Size, box: PaperBox) => ({
  x: box.x0 + Math.max(0, (box.x1 - box.x0 - size.widthMm) / 2),
  y: box.y0,
})
