import { materialById } from '../../catalog/materials.ts'
import type { PanelSummary, RoofSpace } from '../../hive/hive.ts'
import { computeAirLayerResistance } from '../../solvers/iso6946/airLayers.ts'
import type { Layer, Section } from '../../solvers/iso6946/paths.ts'

/** What fills a layer, or bridges it; see `Section` for the taper. */
export type Filling = Pick<Required<Section>, 'resistanceM2KPerW' | 'taperM2KPerW'>

/** One layer of a panel with its timber, if any. */
export interface PanelLayer {
  readonly name: string
  /** Mean thickness if it tapers, mm. */
  readonly thicknessMm: number
  readonly filling: Filling
  readonly timber: (Filling & { readonly fraction: number }) | undefined
}

/** A board or sheet over the whole panel; thickness in mm. */
export interface Sheet {
  readonly material: string
  readonly thickness: number
}

export interface LayeredPanel {
  readonly panel: PanelSummary
  /** What is above the insulated panel of a sloped lid. */
  readonly roof?: RoofSpace | undefined
  /** The cover sheet that keeps rain off the lid. */
  readonly cover?: Sheet | undefined
}

/**
 * The panel's layers from inside to outside. Metal sheet stays in the list although it resists next
 * to nothing. Throws for a material that isn't in the catalogue.
 */
export const derivePanelLayers = ({ panel, roof, cover }: LayeredPanel): readonly PanelLayer[] => [
  sheetLayer('Lining', panel.lining),
  coreLayer(panel),
  sheetLayer(panel.id === 'lid' ? 'Top skin' : 'Cladding', panel.cladding),
  ...(roof ? [roofLayer(panel, roof), sheetLayer('Deck', roof.deck)] : []),
  ...(cover ? [sheetLayer('Cover sheet', cover)] : []),
]

/**
 * The layer as the solver takes it. All timber of a panel has one pattern, since firrings are screwed
 * down over the rails.
 */
export const deriveSolverLayer = ({ filling, timber }: PanelLayer): Layer => {
  if (!timber) return { sections: [{ fraction: 1, ...filling }] }
  return {
    sections: [{ fraction: 1 - timber.fraction, ...filling }, timber],
    pattern: 'timber',
  }
}

/** Share of the core's face that is timber, 0 to 1. */
export const measureTimberFraction = ({ timberArea, coreArea }: PanelSummary): number =>
  timberArea / coreArea

const sheetLayer = (name: string, { material, thickness }: Sheet): PanelLayer => ({
  name: `${name}: ${materialById(material).name}`,
  thicknessMm: thickness,
  filling: evenFilling(material, thickness),
  timber: undefined,
})

const coreLayer = (panel: PanelSummary): PanelLayer => {
  const { insulation, timber, thickness } = panel.core
  return {
    name: `Insulation: ${materialById(insulation).name}`,
    thicknessMm: thickness,
    filling: evenFilling(insulation, thickness),
    timber: { fraction: measureTimberFraction(panel), ...evenFilling(timber, thickness) },
  }
}

/** Above the top skin: closed air at its mean height, or insulation that tapers with the firrings. */
const roofLayer = ({ core }: PanelSummary, roof: RoofSpace): PanelLayer => {
  const { filling, lowHeight, highHeight, timberShare: fraction } = roof
  const meanHeight = (lowHeight + highHeight) / 2
  if (filling === 'air') {
    return {
      name: 'Air space under the deck, mean height',
      thicknessMm: meanHeight,
      filling: {
        resistanceM2KPerW: computeAirLayerResistance({ thicknessM: meanHeight / 1000, flow: 'up' }),
        taperM2KPerW: 0,
      },
      timber: { fraction, ...evenFilling(core.timber, meanHeight) },
    }
  }
  return {
    name: `Tapered insulation: ${materialById(core.insulation).name}, mean height`,
    thicknessMm: meanHeight,
    filling: taperedFilling(core.insulation, roof),
    timber: { fraction, ...taperedFilling(core.timber, roof) },
  }
}

const evenFilling = (material: string, thicknessMm: number): Filling => ({
  resistanceM2KPerW: slabResistance(material, thicknessMm),
  taperM2KPerW: 0,
})

const taperedFilling = (material: string, { lowHeight, highHeight }: RoofSpace): Filling => ({
  resistanceM2KPerW: slabResistance(material, lowHeight),
  taperM2KPerW: slabResistance(material, highHeight - lowHeight),
})

const slabResistance = (material: string, thicknessMm: number): number =>
  thicknessMm / 1000 / materialById(material).conductivityWPerMK
