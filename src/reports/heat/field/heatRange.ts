import type { TemperatureUnit } from '../../../units/temperature.ts'
import { type HeatLevel, heatLevels } from './heatColours.ts'

/** What the colours are spread over: all from outside to inside, or the hive's outer skin alone. */
export type HeatScale = 'whole' | 'outside'

/** The temperatures that the colours run over; they start at the air outside. */
export interface HeatRange {
  /** Where the last colour is, °C. */
  readonly endC: number
  /** The same as a share of the way from outside to inside, above 0, at most 1. */
  readonly endShare: number
  /** Lines of equal temperature within the range; their shares are of the way to inside, too. */
  readonly levels: readonly HeatLevel[]
}

/** What there is to know of a hive and its night, °C; `warmestOutsideShare` as in `HeatFieldAnswer`. */
export interface HeatRangeQuestion {
  readonly outsideC: number
  readonly insideC: number
  readonly warmestOutsideShare: number
  readonly unit: TemperatureUnit
}

/**
 * The range of a scale. The outer skin's ends at its warmest, at least 0.5 K from the air outside and
 * then rounded away from it to 0.2 °C or 0.5 °F; never beyond the air inside.
 */
export const heatRange = (scale: HeatScale, question: HeatRangeQuestion): HeatRange => {
  const { outsideC, insideC, unit } = question
  const span = insideC - outsideC
  const skinC = scale === 'whole' ? insideC : roundedSkinC(question)
  const endShare = span === 0 ? 1 : Math.min(1, (skinC - outsideC) / span)
  const endC = endShare < 1 ? skinC : insideC
  const levels = heatLevels(outsideC, endC, unit).map(({ celsius, share }) => ({
    celsius,
    share: share * endShare,
  }))
  return { endC, endShare, levels }
}

const roundedSkinC = (question: HeatRangeQuestion): number => {
  const { outsideC, insideC, warmestOutsideShare, unit } = question
  const span = insideC - outsideC
  const stepC = unit === 'c' ? 0.2 : 0.5 * (5 / 9)
  const riseC = Math.max(LEAST_RISE, Math.abs(warmestOutsideShare * span))
  // In steps from a round temperature: 0 °C, or 32 °F, which is the same.
  const steps = (outsideC + Math.sign(span) * riseC) / stepC
  return (span < 0 ? Math.floor(steps + 1e-6) : Math.ceil(steps - 1e-6)) * stepC
}

/** K. A hive that leaks next to nothing should look so, not show its noise. */
const LEAST_RISE = 0.5
