import type { HeatLevel } from '../../reports/heat/field/heatColours.ts'
import type { TemperatureUnit } from '../../units/temperature.ts'
import {
  type DrawingItem,
  LABEL_SIZE_MM,
  type PaperPoint,
  solidLine,
  textItem,
} from '../drawing.ts'
import { degreeSign, temperatureNumber } from './temperatureNumber.ts'

/** One isotherm as it lies on the paper. */
export interface PlacedIsotherm {
  readonly level: HeatLevel
  readonly lines: readonly (readonly PaperPoint[])[]
}

export interface LabelPlace {
  /** Labels end at this x, left of the drawing. */
  readonly x: number
  /** The wall to which the leaders run: its sides, and the stretch of height in which they may end. */
  readonly wall: {
    readonly x0: number
    readonly x1: number
    readonly y0: number
    readonly y1: number
  }
  readonly unit: TemperatureUnit
}

/** Room for the longest label with its leader, `-40 °F`. */
export const LABEL_COLUMN_MM = 19

const STEP = 5.4
const DOT_MM = 0.45

/**
 * The temperature of each isotherm at the left of the wall it runs through, the warmest at the top, with
 * a level leader that ends in a dot on it. An isotherm that does not pass through the wall gets none.
 */
export const isothermLabels = (
  isotherms: readonly PlacedIsotherm[],
  { x, wall, unit }: LabelPlace,
): readonly DrawingItem[] => {
  const middle = (wall.y0 + wall.y1) / 2
  const seen = isotherms.filter(({ lines }) => crossingNear(lines, middle, wall) !== undefined)
  const warmFirst = seen.toSorted((a, b) => b.level.share - a.level.share)
  const top = middle - ((warmFirst.length - 1) * STEP) / 2
  return warmFirst.flatMap(({ level, lines }, i) => {
    const y = top + i * STEP
    const target = Math.min(wall.y1, Math.max(wall.y0, y))
    const end = crossingNear(lines, target, wall) ?? crossingNear(lines, middle, wall)
    if (end === undefined) return []
    const label = `${temperatureNumber(level.celsius, unit)} ${degreeSign(unit)}`
    return [
      textItem({ x, y: y + LABEL_SIZE_MM * 0.35 }, label, {
        anchor: 'end',
        tag: `isotherm/${label}`,
      }),
      solidLine('thin', { x: x + 1, y }, end),
      dot(end),
    ]
  })
}

/** Where lines cross a height within the wall; of several places the nearest to the left. */
const crossingNear = (
  lines: PlacedIsotherm['lines'],
  y: number,
  wall: LabelPlace['wall'],
): PaperPoint | undefined => {
  const xs = lines.flatMap((line) =>
    line.slice(1).flatMap((b, i) => {
      const a = line[i] ?? b
      if (a.y <= y === b.y <= y) return []
      const x = a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)
      return x >= wall.x0 && x <= wall.x1 ? [x] : []
    }),
  )
  return xs.length === 0 ? undefined : { x: Math.min(...xs), y }
}

const dot = ({ x, y }: PaperPoint): DrawingItem => ({
  kind: 'polygon',
  points: [
    { x: x - DOT_MM, y },
    { x, y: y - DOT_MM },
    { x: x + DOT_MM, y },
    { x, y: y + DOT_MM },
  ],
  stroke: undefined,
  tint: 'ink',
  hatch: 'none',
})
