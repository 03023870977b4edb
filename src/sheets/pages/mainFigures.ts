import { FRAME_FIELDS } from '../../design/frameFields.ts'
import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { Report } from '../../reports/report.ts'
import { formatLength } from '../../units/length.ts'
import { formatMass } from '../../units/mass.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { formatTemperature } from '../../units/temperature.ts'
import { formatResistance } from '../../units/thermal.ts'

/** One of the numbers that tell a hive at a glance. */
export interface MainFigure {
  readonly caption: string
  readonly value: string
}

/** The numbers of the first sheet, in the user's units. */
export const mainFigures = (
  design: Design,
  hive: Hive,
  report: Report,
  units: UnitPreferences,
): readonly MainFigure[] => {
  const d = hive.dimensions
  const size = (...lengths: readonly number[]) =>
    `${lengths.map((mm) => formatLength(mm, units.length, { decimals: 0 })).join(' × ')} ${units.length}`
  const resistance = (m2KPerW: number) => formatResistance(m2KPerW, units.thermal)
  const { heat, keeper, shop, checks } = report
  const open = checks.filter((c) => c.verdict !== 'ok').length
  const form = design.frame.form === 'split' ? 'split ' : ''
  return [
    {
      caption: 'Frames',
      value: `${hive.row.filter((r) => r.kind === 'frame').length} ${form}${FRAME_FIELDS.standard.options[design.frame.standard]}`,
    },
    {
      caption: 'Inside, length × width × height',
      value: size(d.cavityLength, d.cavityWidth, d.cavityHeight),
    },
    {
      caption: 'Outside over the roof, to the ground',
      value: size(d.roofLength, d.roofWidth, d.roofTop - d.groundHeight),
    },
    {
      caption: 'Walls, with the rails counted',
      value: `${resistance(heat.walls.withRailsM2KPerW)} (wanted ${resistance(heat.walls.targetM2KPerW)})`,
    },
    {
      caption: 'Lid',
      value: `${resistance(heat.lid.withRailsM2KPerW)} (wanted ${resistance(heat.lid.targetM2KPerW)})`,
    },
    {
      caption: 'Floor',
      value: `${resistance(heat.floor.withRailsM2KPerW)} (wanted ${resistance(heat.floor.targetM2KPerW)})`,
    },
    {
      caption: `Heat lost on a night of ${formatTemperature(design.site.coldNightC, units.temperature, { decimals: 0 })}`,
      value: `${heat.coldNightLossW.toFixed(0)} W`,
    },
    {
      caption: `Heaviest lift: ${keeper.heaviestLift.name}`,
      value: formatMass(keeper.heaviestLift.massKg, units.mass),
    },
    {
      caption: 'Mass of the hive, empty and full',
      value: `${formatMass(shop.massKg.empty, units.mass, { decimals: 0 })}, ${formatMass(keeper.fullMassKg, units.mass, { decimals: 0 })}`,
    },
    {
      caption: 'Parts, and different ones among them',
      value: `${shop.partCount}, ${shop.distinctParts}`,
    },
    {
      caption: 'Checks',
      value:
        open === 0
          ? `all ${checks.length} in order`
          : `${open} of ${checks.length} ${open === 1 ? 'needs' : 'need'} a look`,
    },
  ]
}
