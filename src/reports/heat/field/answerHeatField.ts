import type { Hive } from '../../../hive/hive.ts'
import type { FieldAnswer } from '../../../solvers/conduction/fieldAnswer.ts'
import type { HeatReport } from '../computeHeat.ts'
import { computeEdgeLosses } from './computeEdgeLosses.ts'
import { computeWarmestOutside } from './computeWarmestOutside.ts'
import { coldestOf, findColdest } from './findColdest.ts'
import type { HeatFieldAnswer, LossShare, PanelField } from './heatFieldAnswer.ts'
import type { HeatSide, HiveHeatModel } from './hiveHeatModel.ts'
import { type InsideFace, listInsideFaces } from './insideFaces.ts'

/** A hive's field, and what is needed to read it. */
export interface HeatFieldQuestion {
  readonly hive: Pick<Hive, 'dimensions' | 'openings'>
  /** What the panels lose by ISO 6946 alone. */
  readonly heat: Pick<HeatReport, 'panels' | 'walls'>
  readonly model: Pick<HiveHeatModel, 'sources' | 'leftOut'>
  readonly field: FieldAnswer
  readonly quality: HeatFieldAnswer['quality']
  /** See `HeatFieldAnswer`. */
  readonly slopeStepError: number
}

/**
 * What a solved field says about a hive, in the hive's own terms. Panels, shares and edges are taken
 * at the inner surface, and each of them adds up to the conductance of the whole. Throws when the
 * field has no conductance: the air inside must have one temperature, and that outside another.
 */
export const answerHeatField = (question: HeatFieldQuestion): HeatFieldAnswer => {
  const { hive, heat, model, field, quality, slopeStepError } = question
  const { conductanceWPerK, lowerWPerK, upperWPerK } = field
  if (conductanceWPerK === undefined || lowerWPerK === undefined || upperWPerK === undefined) {
    throw new Error('answerHeatField: the field has no conductance')
  }
  const faces = listInsideFaces(hive, model, field)
  const bySide = sumBySide(faces)
  return {
    quality,
    conductanceWPerK,
    lowerWPerK,
    upperWPerK,
    panels: heat.panels.map(({ id, areaM2 }): PanelField => {
      const lost = bySide[id]
      return {
        id,
        conductanceWPerK: lost,
        resistanceM2KPerW: areaM2 / lost,
        coldestFRsi: coldestOf(faces.filter(({ side }) => side === id)),
      }
    }),
    shares: shareOut(bySide, conductanceWPerK),
    edges: computeEdgeLosses(hive, heat, faces),
    coldest: findColdest(hive, model, faces, field.grid),
    warmestOutsideShare: computeWarmestOutside(field.faces),
    slopeStepError,
    leftOut: model.leftOut,
    grid: field.grid,
    unknowns: field.cellUnknowns + field.vertexUnknowns,
    iterations: field.cellIterations + field.vertexIterations,
    hasConverged: field.hasConverged,
  }
}

const sumBySide = (faces: readonly InsideFace[]): Readonly<Record<HeatSide, number>> => {
  const sums: Record<HeatSide, number> = {
    ...{ 'front-wall': 0, 'back-wall': 0, 'left-wall': 0, 'right-wall': 0 },
    ...{ lid: 0, floor: 0, entrance: 0 },
  }
  for (const { side, heatWPerK } of faces) sums[side] += heatWPerK
  return sums
}

const shareOut = (
  bySide: Readonly<Record<HeatSide, number>>,
  wholeWPerK: number,
): readonly LossShare[] => {
  const share = (id: LossShare['id'], ...sides: readonly HeatSide[]): LossShare => {
    const lost = sides.reduce((sum, side) => sum + bySide[side], 0)
    return { id, conductanceWPerK: lost, share: lost / wholeWPerK }
  }
  return [
    share('lid', 'lid'),
    share('walls', 'front-wall', 'back-wall', 'left-wall', 'right-wall'),
    share('floor', 'floor'),
    share('entrances', 'entrance'),
  ]
}
