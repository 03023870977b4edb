import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { HeatReport } from '../heat/computeHeat.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { presentIds } from './presentIds.ts'
import { mmText, proposeFix } from './proposeFix.ts'
import { findThickerCore, type PanelGroup } from './thickerCore.ts'

interface Context {
  readonly design: Pick<Design, PanelGroup | 'shop'>
  readonly hive: Pick<Hive, 'panels' | 'roof' | 'parts'>
  readonly heat: HeatReport
}

/** A panel that misses its target by more than this is not what its builder asked for. */
const NEARLY = 0.9

const PANELS = [
  { group: 'walls', title: 'R-value of the walls', part: 'front-wall/insulation-1' },
  { group: 'lid', title: 'R-value of the lid', part: 'lid/insulation-1' },
  { group: 'floor', title: 'R-value of the floor', part: 'floor/insulation-1' },
] as const

/** Whether walls, lid and floor resist what their builder wants, and the lid as much as the walls. */
export const checkInsulation = (context: Context): readonly Check[] => [
  ...PANELS.map((panel) => checkTarget(context, panel)),
  checkWarmCeiling(context),
]

const checkTarget = (context: Context, { group, title, part }: (typeof PANELS)[number]): Check => {
  const { targetM2KPerW, withRailsM2KPerW } = context.heat[group]
  return assess({
    id: `resistance-${group}`,
    title,
    quantity: 'resistance',
    measured: withRailsM2KPerW,
    band: { low: targetM2KPerW, fixBelow: NEARLY * targetM2KPerW },
    why: 'You asked for this R-value with the timber counted in; less costs the bees more stores.',
    source: 'your own wish; worked out by ISO 6946, combined method',
    fix: () => thicken(context, group, targetM2KPerW),
    partIds: presentIds(context.hive.parts, [part]),
  })
}

const thicken = (context: Context, group: PanelGroup, wanted: number) => {
  const core = findThickerCore(context, group, wanted)
  if (core === undefined) return undefined
  return proposeFix(`Insulate the ${group} with ${mmText(core)}`, [
    { field: `${group}.coreMm`, value: core },
  ])
}

const checkWarmCeiling = (context: Context): Check => {
  const { walls, lid } = context.heat
  return assess({
    id: 'warm-ceiling',
    title: 'Lid R-value over wall R-value',
    quantity: 'ratio',
    measured: lid.withRailsM2KPerW / walls.withRailsM2KPerW,
    band: { low: 1 },
    why: 'Water forms on the coldest face; it should run down a wall, not drip on the cluster.',
    source: 'chelifer.de, building physics of the nest; ratio derived from old mattress-top hives',
    fix: () => thicken(context, 'lid', walls.withRailsM2KPerW),
    partIds: presentIds(context.hive.parts, ['lid/lining', 'front-wall/lining']),
  })
}
