import { materialById } from '../../catalog/materials.ts'
import type { Hive } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { estimateTextWidthMm, HEADING_SIZE_MM, LABEL_SIZE_MM, textItem } from '../drawing.ts'
import { SCALE_DENOMINATORS, type Size } from '../fitScale.ts'
import { toPaper, type View, type ViewDrawing } from '../view.ts'
import { type CutPart, cutParts } from './cutParts.ts'
import { type Label, labelColumn, labelColumnHeight } from './labelColumn.ts'
import type { Bounds2 } from './polygon2.ts'
import { sectionItems } from './sectionItems.ts'
import { sectionPlace } from './sectionPlace.ts'

/** Which end of the front wall a detail shows. */
export type WallEnd = 'top' | 'foot'

const TITLE_ROOM = HEADING_SIZE_MM + 4
/** How much of the wall and of the room beside it a detail shows, model mm. */
const WALL_SHOWN = 100
const ROOM_SHOWN = 70
/** Words for label columns wider than this are broken into lines. */
const LABEL_WIDTH_MM = 58

/**
 * A cut through the front wall and what meets it, seen from the right-hand end, so outside is at the
 * left: at the top with rest, covers, lid and roof, or at the foot with the floor. Each layer is named
 * with its thickness. The largest of 1:1, 1:2, 1:5 … that fits the area.
 */
export const wallSection = (
  hive: Hive,
  end: WallEnd,
  units: UnitPreferences,
  area: Size,
): ViewDrawing => {
  const window = windowOf(hive, end)
  const parts = hive.parts.filter((p) => p.group !== 'stand')
  const cuts = cutParts(parts, { axis: 'x', at: sectionPlace(hive) }, { window })
  const room = {
    widthMm: area.widthMm - 2 * (LABEL_WIDTH_MM + 4),
    heightMm: area.heightMm - TITLE_ROOM,
  }
  const scaleDenominator =
    SCALE_DENOMINATORS.find(
      (n) =>
        (window.u1 - window.u0) / n <= room.widthMm && (window.v1 - window.v0) / n <= room.heightMm,
    ) ?? 100
  const scale = 1 / scaleDenominator
  const width = (window.u1 - window.u0) * scale
  const height = (window.v1 - window.v0) * scale
  const left = LABEL_WIDTH_MM + 4
  const view: View = {
    scale,
    origin: { x: left - window.u0 * scale, y: TITLE_ROOM + window.v1 * scale },
  }
  const labels = labelsOf(cuts, units, view)
  const middle = left + width / 2
  const isLeft = (l: Label) => (l.target.x0 + l.target.x1) / 2 < middle
  const columns = [labels.filter(isLeft), labels.filter((l) => !isLeft(l))] as const
  const tallest = Math.max(height, ...columns.map(labelColumnHeight))
  const bottom = TITLE_ROOM + tallest
  return {
    widthMm: width + 2 * left,
    heightMm: bottom,
    view,
    scaleDenominator,
    items: [
      textItem({ x: 0, y: HEADING_SIZE_MM }, `${TITLES[end]}  1:${scaleDenominator}`, {
        sizeMm: HEADING_SIZE_MM,
        weight: 'semibold',
      }),
      ...sectionItems(cuts, view),
      ...labelColumn(columns[0], { x: left - 4, side: 'left', top: TITLE_ROOM, bottom }),
      ...labelColumn(columns[1], { x: left + width + 4, side: 'right', top: TITLE_ROOM, bottom }),
    ],
  }
}

const TITLES: Readonly<Record<WallEnd, string>> = {
  top: 'Front wall at the top: rest, covers, lid and roof',
  foot: 'Front wall at the foot, with the floor',
}

/** Seen from the right-hand end, so u is minus z. */
const windowOf = ({ dimensions: d }: Hive, end: WallEnd): Bounds2 => {
  const inner = -d.cavityWidth / 2
  const outermost = -Math.max(d.roofWidth, d.outerWidth) / 2
  return end === 'top'
    ? {
        u0: outermost - 4,
        u1: inner + ROOM_SHOWN,
        v0: d.restHeight - WALL_SHOWN,
        v1: d.roofTop + 4,
      }
    : {
        u0: -d.outerWidth / 2 - 30,
        u1: inner + ROOM_SHOWN + 30,
        v0: -d.bearerHeight - 6,
        v1: WALL_SHOWN,
      }
}

/** One label for each kind of layer, pointing at the largest face of it. */
const labelsOf = (
  cuts: readonly CutPart[],
  units: UnitPreferences,
  view: View,
): readonly Label[] => {
  const areaOf = ({ bounds: b }: CutPart) => (b.u1 - b.u0) * (b.v1 - b.v0)
  const byName = new Map<string, CutPart>()
  for (const cut of cuts) {
    const known = byName.get(cut.part.name)
    if (known === undefined || areaOf(cut) > areaOf(known)) byName.set(cut.part.name, cut)
  }
  return [...byName.values()].map((cut) => {
    const { part } = cut
    const thickness = formatLength(part.size.thickness, units.length, { withUnit: true })
    const [a, b] = [
      toPaper(view, { u: cut.bounds.u0, v: cut.bounds.v1 }),
      toPaper(view, { u: cut.bounds.u1, v: cut.bounds.v0 }),
    ]
    return {
      lines: [
        ...breakLabel(part.name),
        ...breakLabel(`${materialById(part.material).name}, ${thickness}`),
      ],
      target: { x0: a.x, x1: b.x, y0: a.y, y1: b.y },
      tag: part.id,
    }
  })
}

/** Breaks words into lines no wider than a label column. */
const breakLabel = (text: string): readonly string[] => {
  const lines: string[] = []
  for (const word of text.split(' ')) {
    const last = lines.at(-1)
    const longer = `${last} ${word}`
    const fits = estimateTextWidthMm(longer, LABEL_SIZE_MM) <= LABEL_WIDTH_MM
    if (last !== undefined && fits) lines[lines.length - 1] = longer
    else lines.push(word)
  }
  return lines
}
