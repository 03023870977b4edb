import type { HeatReport } from '../../../reports/heat/computeHeat.ts'
import type { PanelField } from '../../../reports/heat/field/heatFieldAnswer.ts'
import { formatTrimmed } from '../../../units/number.ts'
import { formatFineConductance, type ThermalUnit } from '../../../units/thermal.ts'
import { type Night, nightLossW } from '../../night.ts'
import type { FieldView } from './useFieldView.ts'

export type FieldStage = 'working' | 'preview' | 'full' | 'none'

/** How far the reckoning is for the present design. */
export const fieldStage = ({ answer, isOld, problem }: FieldView): FieldStage => {
  if (answer !== undefined && !isOld) return answer.quality
  return problem === undefined ? 'working' : 'none'
}

export const STAGE_WORD: Readonly<Record<FieldStage, string>> = {
  working: 'Working it out',
  preview: 'Preview',
  full: 'Full accuracy',
  none: 'No answer',
}

/** Of figures that are not about the present design; they are dimmed too. */
export const OLD_WORDS = 'from before your last change'

/** What the panels lose by themselves, W/K: all there is to show before the field has come. */
export const sumOfPanels = ({ panels }: Pick<HeatReport, 'panels'>): number =>
  panels.reduce((sum, panel) => sum + panel.conductanceWPerK, 0)

/** Heat as power: `48.2 W`. */
export const watts = (w: number): string => `${formatTrimmed(w, 1)} W`

/** What a remedy brings for each degree and on the cold night. */
export const savedWords = (savedWPerK: number, night: Night, unit: ThermalUnit): string => {
  const size = Math.abs(savedWPerK)
  if (size < 0.0005) return 'Changes next to nothing'
  const perDegree = formatFineConductance(size, unit)
  const onNight = watts(nightLossW(size, night))
  return `${savedWPerK > 0 ? 'Saves' : 'Costs'} ${perDegree}, ${onNight} on the cold night`
}

/** How another home's loss compares with this hive's: `Loses 2.1 times as much as this hive.` */
export const timesWords = (otherWPerK: number, thisWPerK: number): string => {
  const times = otherWPerK / thisWPerK
  if (!Number.isFinite(times)) return ''
  if (Math.abs(times - 1) < 0.015) return 'Loses as much as this hive.'
  if (times >= 1.95) return `Loses ${formatTrimmed(times, 1)} times as much as this hive.`
  const percent = formatTrimmed(Math.abs(times - 1) * 100, 0)
  return `Loses ${percent} % ${times > 1 ? 'more' : 'less'} than this hive.`
}

/** Whole percents that add up to 100, by largest remainder; shares must add up to 1. */
export const wholePercents = (shares: readonly number[]): readonly number[] => {
  const floors = shares.map((share) => Math.floor(share * 100))
  const missing = Math.round(100 - floors.reduce((sum, floor) => sum + floor, 0))
  const remainder = (i: number) => (shares[i] ?? 0) * 100 - (floors[i] ?? 0)
  const byRemainder = [...shares.keys()].sort((a, b) => remainder(b) - remainder(a))
  const raised = new Set(byRemainder.slice(0, missing))
  return floors.map((floor, i) => floor + (raised.has(i) ? 1 : 0))
}

/**
 * Several panels as if they were one: inside areas and heat add up, resistances do not. Undefined for
 * no panels.
 */
export const resistanceTogether = (
  panels: readonly Pick<PanelField, 'conductanceWPerK' | 'resistanceM2KPerW'>[],
): number | undefined => {
  const heat = panels.reduce((sum, panel) => sum + panel.conductanceWPerK, 0)
  const area = panels.reduce(
    (sum, panel) => sum + panel.conductanceWPerK * panel.resistanceM2KPerW,
    0,
  )
  return heat > 0 ? area / heat : undefined
}
