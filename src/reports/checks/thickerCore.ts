import { materialById } from '../../catalog/materials.ts'
import type { Design } from '../../design/schema.ts'
import type { Hive, PanelSummary } from '../../hive/hive.ts'
import { computePanelHeat } from '../heat/panelHeat.ts'
import { stockSystemOf } from '../shop/stockSystem.ts'

/** The panels that share one set of layers in the document. */
export type PanelGroup = 'walls' | 'lid' | 'floor'

/**
 * The next usual thickness of a panel's insulation, mm, with which the panel reaches `wanted` m²K/W;
 * when no single board is thick enough, two boards together. Undefined when nothing on sale reaches
 * it. The rest of the panel stays as it is, so the real hive may differ by a hair: `wanted` is passed
 * by half a percent.
 */
export const findThickerCore = (
  context: {
    readonly design: Pick<Design, PanelGroup | 'shop'>
    readonly hive: Pick<Hive, 'panels' | 'roof'>
  },
  group: PanelGroup,
  wanted: number,
): number | undefined => {
  const { coreMm, insulation } = context.design[group]
  const { thicknessesMm, thicknessesUsMm } = materialById(insulation)
  const single =
    stockSystemOf(context.design.shop.longestBoardMm) === 'us' ? thicknessesUsMm : thicknessesMm
  const reaches = (mm: number): boolean =>
    mm > coreMm && resistanceWith(context, group, mm) >= wanted * MARGIN
  const pairs = single.flatMap((a) => single.map((b) => a + b)).sort((a, b) => a - b)
  return single.find(reaches) ?? pairs.find(reaches)
}

const MARGIN = 1.005

/** Resistance with timber of a group of panels if their core were this thick, m²K/W. */
const resistanceWith = (
  { design, hive }: Parameters<typeof findThickerCore>[0],
  group: PanelGroup,
  coreMm: number,
): number => {
  const cover = { material: design.lid.coverMaterial, thickness: design.lid.coverMm }
  let area = 0
  let conductance = 0
  for (const panel of hive.panels) {
    if (groupOf(panel) !== group) continue
    const thicker = { ...panel, core: { ...panel.core, thickness: coreMm } }
    const above = group === 'lid' ? { roof: hive.roof, cover } : {}
    const heat = computePanelHeat({ panel: thicker, targetM2KPerW: 0, ...above })
    area += heat.areaM2
    conductance += heat.conductanceWPerK
  }
  return conductance === 0 ? 0 : area / conductance
}

const groupOf = ({ id }: PanelSummary): PanelGroup =>
  id === 'lid' || id === 'floor' ? id : 'walls'
