import { materialById } from '../../catalog/materials.ts'
import { polygonArea } from '../../geometry/solid.ts'
import type { Hive } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { estimateTextWidthMm, HEADING_SIZE_MM, LABEL_SIZE_MM, textItem } from '../drawing.ts'
import { fitScale, type Size } from '../fitScale.ts'
import { type ModelPoint, toPaper, type View, type ViewDrawing } from '../view.ts'
import { type CutPart, cutParts } from './cutParts.ts'
import { type Label, labelColumn, labelColumnHeight } from './labelColumn.ts'
import { type Bounds2, boundsOf } from './polygon2.ts'
import { sectionItems } from './sectionItems.ts'
import { sectionPlace } from './sectionPlace.ts'

/** Which end of the front wall a detail shows. */
export type WallEnd = 'top' | 'foot'

const TITLE_ROOM = HEADING_SIZE_MM + 4
/** How much of the wall a detail shows at most, and how much of the room beside it, model mm. */
const WALL_SHOWN = 120
const ROOM_SHOWN = 70
/** Less wall than this does not show its layers. */
const LEAST_WALL = 60
const LABEL_WIDTH_MM = 56
const COLUMN_MM = LABEL_WIDTH_MM + 4

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
  const { window, scaleDenominator } = fitWindow(hive, end, {
    widthMm: area.widthMm - 2 * COLUMN_MM,
    heightMm: area.heightMm - TITLE_ROOM,
  })
  const parts = hive.parts.filter((p) => p.group !== 'stand')
  const cuts = cutParts(parts, { axis: 'x', at: sectionPlace(hive) }, { window })
  const scale = 1 / scaleDenominator
  const width = (window.u1 - window.u0) * scale
  const height = (window.v1 - window.v0) * scale
  const view: View = {
    scale,
    origin: { x: COLUMN_MM - window.u0 * scale, y: TITLE_ROOM + window.v1 * scale },
  }
  const [left, right] = shareOut(cuts.flatMap(largestFace), units, view)
  const tallest = Math.max(height, labelColumnHeight(left), labelColumnHeight(right))
  const rows = { top: TITLE_ROOM, bottom: TITLE_ROOM + tallest }
  return {
    widthMm: width + 2 * COLUMN_MM,
    heightMm: rows.bottom,
    view,
    scaleDenominator,
    items: [
      textItem({ x: 0, y: HEADING_SIZE_MM }, `${TITLES[end]}  1:${scaleDenominator}`, {
        sizeMm: HEADING_SIZE_MM,
        weight: 'semibold',
      }),
      ...sectionItems(cuts, view),
      ...labelColumn(left, { x: COLUMN_MM - 4, side: 'left', ...rows }),
      ...labelColumn(right, { x: COLUMN_MM + width + 4, side: 'right', ...rows }),
    ],
  }
}

const TITLES: Readonly<Record<WallEnd, string>> = {
  top: 'Front wall at the top: rest, covers, lid and roof',
  foot: 'Front wall at the foot, with the floor',
}

/** The largest scale at which enough of the wall is seen, and then as much wall as there is room for. */
const fitWindow = (hive: Hive, end: WallEnd, room: Size) => {
  const least = windowOf(hive, end, LEAST_WALL)
  const scaleDenominator = fitScale(sizeOf(least), room)
  const spare = room.heightMm * scaleDenominator - sizeOf(least).heightMm
  const wall = Math.min(WALL_SHOWN, LEAST_WALL + Math.max(0, spare))
  return { window: windowOf(hive, end, wall), scaleDenominator }
}

const sizeOf = (b: Bounds2): Size => ({ widthMm: b.u1 - b.u0, heightMm: b.v1 - b.v0 })

/** Seen from the right-hand end, so u is minus z. */
const windowOf = ({ dimensions: d }: Hive, end: WallEnd, wall: number): Bounds2 => {
  const inner = -d.cavityWidth / 2
  return end === 'top'
    ? {
        u0: -Math.max(d.roofWidth, d.outerWidth) / 2 - 4,
        u1: inner + ROOM_SHOWN,
        v0: d.restHeight - wall,
        v1: d.roofTop + 4,
      }
    : {
        u0: -d.outerWidth / 2 - 30,
        u1: inner + ROOM_SHOWN + 30,
        v0: -d.bearerHeight - 6,
        v1: wall,
      }
}

interface NamedFace {
  readonly cut: CutPart
  readonly face: readonly ModelPoint[]
}

const largestFace = (cut: CutPart): readonly NamedFace[] => {
  const [face] = [...cut.faces].sort((a, b) => polygonArea(b) - polygonArea(a))
  return face === undefined ? [] : [{ cut, face }]
}

/** One label for each kind of layer, half of them at each side by where they lie. */
const shareOut = (
  faces: readonly NamedFace[],
  units: UnitPreferences,
  view: View,
): readonly [readonly Label[], readonly Label[]] => {
  const byName = new Map<string, NamedFace>()
  for (const named of faces) {
    const known = byName.get(named.cut.part.name)
    if (known === undefined || polygonArea(named.face) > polygonArea(known.face)) {
      byName.set(named.cut.part.name, named)
    }
  }
  const middle = ({ face }: NamedFace) => boundsOf(face).u0 + boundsOf(face).u1
  const labels = [...byName.values()]
    .sort((a, b) => middle(a) - middle(b))
    .map(({ cut: { part }, face }) => ({
      lines: [
        ...breakLabel(part.name),
        ...breakLabel(
          `${materialById(part.material).name}, ${formatLength(part.size.thickness, units.length, { withUnit: true })}`,
        ),
      ],
      face: face.map((p) => toPaper(view, p)),
      tag: part.id,
    }))
  const half = Math.ceil(labels.length / 2)
  return [labels.slice(0, half), labels.slice(half)]
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
