import type { TemperatureUnit } from '../../units/temperature.ts'
import { type DrawingItem, LABEL_SIZE_MM, solidLine, textItem } from '../drawing.ts'
import type { HeatScale, HeatTemperatures } from './heatBands.ts'
import { degreeSign, temperatureNumber } from './temperatureNumber.ts'

export const LEGEND_SIZE = { widthMm: 124, heightMm: 17 } as const

const BAR_TOP = 5.6
const BAR_HEIGHT = 5
/** Room for a number between two others. */
const NUMBER_ROOM = 9
const TICK = 1.4

/**
 * The colours from the air outside to the air inside with the temperature of each isotherm, with its
 * top left corner at 0, 0. The isotherms' numbers stand in the drawing too, so it reads without colour.
 */
export const heatLegend = (
  { levels, bands }: HeatScale,
  { outsideC, insideC }: HeatTemperatures,
  unit: TemperatureUnit,
): readonly DrawingItem[] => {
  const foot = BAR_TOP + BAR_HEIGHT
  const x = (share: number) => MARGIN + share * (LEGEND_SIZE.widthMm - 2 * MARGIN)
  const number = (celsius: number) => temperatureNumber(celsius, unit)
  const mark = (celsius: number, share: number): readonly DrawingItem[] => [
    solidLine('thin', { x: x(share), y: BAR_TOP }, { x: x(share), y: foot + TICK }),
    textItem({ x: x(share), y: foot + TICK + LABEL_SIZE_MM }, number(celsius), {
      anchor: 'middle',
    }),
  ]
  const box = (from: number, to: number) => [
    { x: x(from), y: BAR_TOP },
    { x: x(to), y: BAR_TOP },
    { x: x(to), y: foot },
    { x: x(from), y: foot },
  ]
  return [
    textItem(
      { x: 0, y: LABEL_SIZE_MM },
      `Temperature in ${degreeSign(unit)}: air outside ${number(outsideC)}, air inside ${number(insideC)}`,
    ),
    ...bands.map(
      ({ from, to, colour }): DrawingItem => ({ kind: 'colour', loops: [box(from, to)], colour }),
    ),
    {
      kind: 'polygon',
      points: box(0, 1),
      stroke: { weight: 'thin', dash: 'solid' },
      tint: 'none',
      hatch: 'none',
    },
    ...spaced(levels.map((l) => ({ ...l, at: x(l.share) }))).flatMap((l) =>
      mark(l.celsius, l.share),
    ),
  ]
}

/** Half of a number overhangs the bar at each end. */
const MARGIN = 4

/** Numbers that have room beside the one before. */
const spaced = <T extends { readonly at: number }>(marks: readonly T[]): readonly T[] => {
  const kept: T[] = []
  for (const m of marks) {
    const last = kept.at(-1)
    if (last === undefined || m.at - last.at >= NUMBER_ROOM) kept.push(m)
  }
  return kept
}
