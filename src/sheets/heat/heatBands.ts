import { type HeatLevel, heatColour, heatLevels } from '../../reports/heat/field/heatColours.ts'
import type { TemperatureUnit } from '../../units/temperature.ts'
import type { PaperColour } from '../drawing.ts'

/** The air on both sides of the hive's walls, °C. */
export interface HeatTemperatures {
  readonly outsideC: number
  readonly insideC: number
}

/** Temperatures that are shown in one colour, as shares of the way from outside to inside. */
export interface HeatBand {
  readonly from: number
  readonly to: number
  readonly colour: PaperColour
}

export interface HeatScale {
  /** The isotherms, by rising share. */
  readonly levels: readonly HeatLevel[]
  /** From one isotherm to the next, with the air's two temperatures at the ends; one more than levels. */
  readonly bands: readonly HeatBand[]
}

/** Isotherms at round temperatures and a colour between each two. Without levels, all is one band. */
export const deriveHeatScale = (
  { outsideC, insideC }: HeatTemperatures,
  unit: TemperatureUnit,
): HeatScale => {
  const levels = heatLevels(outsideC, insideC, unit).toSorted((a, b) => a.share - b.share)
  const limits = [0, ...levels.map((l) => l.share), 1]
  const bands = limits.slice(1).map((to, i) => {
    const from = limits[i] ?? 0
    return { from, to, colour: heatColour((from + to) / 2) }
  })
  return { levels, bands }
}
