import type { Hive } from '../../hive/hive.ts'
import type { HeatReport } from '../heat/computeHeat.ts'
import { PANEL_WORDS } from '../heat/field/panelWords.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { presentIds } from './presentIds.ts'

interface Context {
  readonly hive: Pick<Hive, 'parts'>
  readonly heat: Pick<HeatReport, 'panels' | 'field'>
}

/**
 * Where the hive sweats first, and what edges leave of the panels' R-values. Only the heat field knows;
 * without it there is nothing to check. Nothing here forbids building: sound hives stand with worse.
 */
export const checkColdSpots = ({ hive, heat }: Context): readonly Check[] => {
  const { field, panels } = heat
  if (field === undefined) return []
  return [...checkCeiling(hive, field), ...checkPanelInHive(hive, panels, field)]
}

type Field = NonNullable<HeatReport['field']>

/** Water settles first where the surface is coldest, and should not do so above the bees. */
const checkCeiling = (hive: Context['hive'], { panels, coldest }: Field): readonly Check[] => {
  const least = (isCeiling: boolean): number =>
    Math.min(...panels.filter(({ id }) => (id === 'lid') === isCeiling).map((p) => p.coldestFRsi))
  const ratio = least(true) / least(false)
  if (!Number.isFinite(ratio)) return []
  return [
    assess({
      id: 'ceiling-stays-warmer',
      title: 'Coldest spot of the ceiling against the coldest of walls and floor',
      quantity: 'ratio',
      measured: ratio,
      band: { low: 1 },
      why:
        `The hive sweats first ${coldest.place}. Over 1, that is below the ceiling, where water runs ` +
        'down and cannot drip on the bees. Put more insulation over the ceiling and the wall tops ' +
        'if it is less.',
      source:
        'steady conduction through the whole hive, surface resistances of ISO 6946; that the ceiling ' +
        'should be the warmest is common practice',
      partIds: coldest.partId === undefined ? [] : presentIds(hive.parts, [coldest.partId]),
    }),
  ]
}

/** Edges that take more than half of what the layers promise deserve a look: our own rule. */
const LEAST_LEFT = 0.5

const checkPanelInHive = (
  hive: Context['hive'],
  panels: HeatReport['panels'],
  field: Field,
): readonly Check[] => {
  const left = panels.flatMap((panel) => {
    const seen = field.panels.find(({ id }) => id === panel.id)
    if (seen === undefined) return []
    return [{ id: panel.id, ratio: seen.resistanceM2KPerW / panel.withRailsM2KPerW }]
  })
  const [first, ...others] = left
  if (first === undefined) return []
  const worst = others.reduce((a, b) => (b.ratio < a.ratio ? b : a), first)
  return [
    assess({
      id: 'resistance-left-by-edges',
      title: 'Least share of its R-value that a panel keeps in the hive',
      quantity: 'ratio',
      measured: worst.ratio,
      band: { low: LEAST_LEFT },
      why:
        `Heat slips round the edges of the insulation, most of all at ${PANEL_WORDS[worst.id]}; ` +
        'thicker insulation alone will then bring little.',
      source: 'steady conduction through the whole hive (ISO 10211); half is a rule of our own',
      partIds: presentIds(hive.parts, [`${worst.id}/lining`]),
    }),
  ]
}
