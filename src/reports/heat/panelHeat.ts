import type { PanelSummary } from '../../hive/hive.ts'
import { computeCombinedResistance } from '../../solvers/iso6946/combinedMethod.ts'
import { type HeatFlow, SURFACE_RESISTANCES } from '../../solvers/iso6946/surfaceResistances.ts'
import {
  derivePanelLayers,
  deriveSolverLayer,
  type LayeredPanel,
  measureTimberFraction,
  type PanelLayer,
} from './panelLayers.ts'

/** One layer of a panel, from inside to outside. */
export interface LayerAnswer {
  readonly name: string
  /** Mean thickness if it tapers, mm. */
  readonly thicknessMm: number
  /** Between the rails, m²K/W. With both surfaces the layers add up to `betweenRailsM2KPerW`. */
  readonly resistanceM2KPerW: number
}

/** The honest answers for one panel. Resistances include both surfaces, m²K/W. */
export interface PanelHeat {
  readonly id: PanelSummary['id']
  readonly name: string
  readonly heatFlow: HeatFlow
  readonly surfaceInsideM2KPerW: number
  readonly surfaceOutsideM2KPerW: number
  /** Through the insulation alone, no timber. */
  readonly betweenRailsM2KPerW: number
  /** ISO 6946 combined method: mean of the two bounds. */
  readonly withRailsM2KPerW: number
  readonly upperBoundM2KPerW: number
  readonly lowerBoundM2KPerW: number
  /**
   * Largest relative error of the combined method, (upper - lower) / (2 x combined). Over 0.2 (upper
   * over 1.5 times lower) the standard doesn't allow the method.
   */
  readonly relativeError: number
  /** Share of the insulated layer's face that is timber, 0 to 1; firrings are not in it. */
  readonly timberFraction: number
  /** Inside face. */
  readonly areaM2: number
  readonly conductanceWPerK: number
  readonly targetM2KPerW: number
  readonly meetsTarget: boolean
  readonly layers: readonly LayerAnswer[]
}

export interface PanelQuestion extends LayeredPanel {
  readonly targetM2KPerW: number
}

/**
 * Thermal answers for one panel: heat goes sideways through walls, up through the lid, down through
 * the floor. Loose cover boards, the air above them, and screws through the rails are left out.
 */
export const computePanelHeat = (question: PanelQuestion): PanelHeat => {
  const { panel, targetM2KPerW } = question
  const heatFlow = HEAT_FLOW[panel.id]
  const surfaces = SURFACE_RESISTANCES[heatFlow]
  const layers = derivePanelLayers(question)

  const whole = computeCombinedResistance({ ...surfaces, layers: layers.map(deriveSolverLayer) })
  const noTimber = layers.map((layer) => deriveSolverLayer({ ...layer, timber: undefined }))
  const between = computeCombinedResistance({ ...surfaces, layers: noTimber })

  const areaM2 = panel.innerArea / MM2_PER_M2
  return {
    id: panel.id,
    name: panel.name,
    heatFlow,
    surfaceInsideM2KPerW: surfaces.insideM2KPerW,
    surfaceOutsideM2KPerW: surfaces.outsideM2KPerW,
    betweenRailsM2KPerW: between.resistanceM2KPerW,
    withRailsM2KPerW: whole.resistanceM2KPerW,
    upperBoundM2KPerW: whole.upperM2KPerW,
    lowerBoundM2KPerW: whole.lowerM2KPerW,
    relativeError: whole.relativeError,
    timberFraction: measureTimberFraction(panel),
    areaM2,
    conductanceWPerK: areaM2 * whole.transmittanceWPerM2K,
    targetM2KPerW,
    meetsTarget: whole.resistanceM2KPerW >= targetM2KPerW,
    layers: computeLayerAnswers(
      layers,
      between.resistanceM2KPerW - surfaces.insideM2KPerW - surfaces.outsideM2KPerW,
    ),
  }
}

const HEAT_FLOW: Readonly<Record<PanelSummary['id'], HeatFlow>> = {
  'front-wall': 'horizontal',
  'back-wall': 'horizontal',
  'left-wall': 'horizontal',
  'right-wall': 'horizontal',
  lid: 'up',
  floor: 'down',
}

const MM2_PER_M2 = 1e6

/** A tapered layer gets what the even parts leave of the whole, so that the list adds up. */
const computeLayerAnswers = (
  layers: readonly PanelLayer[],
  surfaceToSurfaceM2KPerW: number,
): readonly LayerAnswer[] => {
  const even = layers.reduce((sum, { filling }) => sum + filling.resistanceM2KPerW, 0)
  return layers.map(({ name, thicknessMm, filling }) => ({
    name,
    thicknessMm,
    resistanceM2KPerW:
      filling.resistanceM2KPerW + (filling.taperM2KPerW > 0 ? surfaceToSurfaceM2KPerW - even : 0),
  }))
}
