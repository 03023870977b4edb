/**
 * The heat report: what each panel resists, what the whole hive loses.
 *
 * `panelLayers.ts` turns a panel of the hive into layers, `panelHeat.ts` asks the ISO 6946 solver
 * about them, and this file adds the panels up. `computeWholeHive` alone decides the conductance of
 * the whole hive and names the method: the sum of the panels at once, or the 3D field with corners,
 * edges and entrances in it once that is solved. Losses and months follow from the conductance; the
 * ISO 6946 answers for each panel stay as they are, for the field is read against them.
 */
import type { Design } from '../../design/schema.ts'
import type { Hive, PanelSummary } from '../../hive/hive.ts'
import type { HeatFieldAnswer } from './field/heatFieldAnswer.ts'
import { computeMonthlyOutside, type OutsideMonth } from './monthlyOutside.ts'
import { computePanelHeat, type PanelHeat } from './panelHeat.ts'

export type { HeatFlow } from '../../solvers/iso6946/surfaceResistances.ts'
export type { PanelHeat } from './panelHeat.ts'

export interface HeatReport {
  readonly panels: readonly PanelHeat[]
  /** Area-weighted over the four walls: their resistance as if they were one wall. */
  readonly walls: {
    readonly withRailsM2KPerW: number
    readonly betweenRailsM2KPerW: number
    readonly targetM2KPerW: number
    readonly meetsTarget: boolean
  }
  readonly lid: PanelHeat
  readonly floor: PanelHeat
  /** Heat from the whole hive for each degree between the air inside and outside, by `method`. */
  readonly conductanceWPerK: number
  /**
   * `panel-sum`: the panels by their areas, without corners and edges. `field`: steady conduction in
   * three dimensions, all in it.
   */
  readonly method: 'panel-sum' | 'field'
  /** There when `method` is `field`. */
  readonly field?: HeatFieldAnswer
  /** With the hive's air at `colony.cavityAirC` and `site.coldNightC` outside; never below 0. */
  readonly coldNightLossW: number
  /** The same hive air against each month's mean outside; never below 0. */
  readonly months: readonly (OutsideMonth & { readonly lossW: number })[]
}

/**
 * All heat answers for a hive, with the field of this very hive if it is solved. Throws if the hive
 * has no lid, no floor or no walls.
 */
export const computeHeat = (
  design: Pick<Design, 'walls' | 'lid' | 'floor' | 'site' | 'colony'>,
  hive: Pick<Hive, 'panels' | 'roof'>,
  field?: HeatFieldAnswer,
): HeatReport => {
  const cover = { material: design.lid.coverMaterial, thickness: design.lid.coverMm }
  const panels = hive.panels.map((panel) => {
    const { targetM2KPerW } = groupOf(design, panel.id)
    if (panel.id !== 'lid') return computePanelHeat({ panel, targetM2KPerW })
    return computePanelHeat({ panel, targetM2KPerW, roof: hive.roof, cover })
  })
  const whole = computeWholeHive(panels, field)
  const lossTo = (outsideC: number): number =>
    Math.max(0, whole.conductanceWPerK * (design.colony.cavityAirC - outsideC))

  return {
    panels,
    walls: averageWalls(panels, design.walls.targetM2KPerW),
    lid: findPanel(panels, 'lid'),
    floor: findPanel(panels, 'floor'),
    ...whole,
    coldNightLossW: lossTo(design.site.coldNightC),
    months: computeMonthlyOutside(design.site).map((month) => ({
      ...month,
      lossW: lossTo(month.outsideC),
    })),
  }
}

/** Heat from the whole hive for each degree between the air inside and outside. */
const computeWholeHive = (
  panels: readonly PanelHeat[],
  field: HeatFieldAnswer | undefined,
): Pick<HeatReport, 'method' | 'conductanceWPerK' | 'field'> =>
  field === undefined
    ? {
        method: 'panel-sum',
        conductanceWPerK: sum(panels.map((panel) => panel.conductanceWPerK)),
      }
    : { method: 'field', conductanceWPerK: field.conductanceWPerK, field }

const groupOf = (design: Pick<Design, 'walls' | 'lid' | 'floor'>, id: PanelSummary['id']) =>
  id === 'lid' || id === 'floor' ? design[id] : design.walls

/** Side by side, transmittances average by area, not resistances. */
const averageWalls = (panels: readonly PanelHeat[], targetM2KPerW: number): HeatReport['walls'] => {
  const walls = panels.filter(({ heatFlow }) => heatFlow === 'horizontal')
  const areaM2 = sum(walls.map((wall) => wall.areaM2))
  if (areaM2 === 0) throw new Error('computeHeat: the hive has no walls')
  const withRailsM2KPerW = areaM2 / sum(walls.map((w) => w.areaM2 / w.withRailsM2KPerW))
  const betweenRailsM2KPerW = areaM2 / sum(walls.map((w) => w.areaM2 / w.betweenRailsM2KPerW))
  return {
    withRailsM2KPerW,
    betweenRailsM2KPerW,
    targetM2KPerW,
    meetsTarget: withRailsM2KPerW >= targetM2KPerW,
  }
}

const findPanel = (panels: readonly PanelHeat[], id: PanelHeat['id']): PanelHeat => {
  const panel = panels.find((candidate) => candidate.id === id)
  if (!panel) throw new Error(`computeHeat: the hive has no ${id}`)
  return panel
}

const sum = (values: readonly number[]): number => values.reduce((total, v) => total + v, 0)
