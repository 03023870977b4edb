import type { Hive } from '../hive/hive.ts'
import type { Size } from './fitScale.ts'
import { deriveHeatScale } from './heat/heatBands.ts'
import { heatLegend, LEGEND_SIZE } from './heat/heatLegend.ts'
import { fitHeatSection, type HeatSectionQuestion } from './heat/heatSection.ts'
import { placeDrawing, type ViewDrawing } from './view.ts'
import type { CutPlane } from './views/cutSolid.ts'

export type { HeatSectionQuestion } from './heat/heatSection.ts'

/** A sheet of the proportions of a screen. */
const SCREEN: Size = { widthMm: 400, heightMm: 280 }
const LEGEND_GAP = 5

/**
 * The hive cut anywhere across or along, as `sectionDrawing` cuts it, coloured by temperature, with
 * labelled isotherms and a legend: the stand-in for the 3D view while it shows heat. `at` is in model
 * mm; where the plane misses the hive, the drawing is empty but for its title and the legend.
 */
export const heatSectionDrawing = (
  hive: Hive,
  plane: CutPlane,
  question: HeatSectionQuestion,
): ViewDrawing => {
  const { temperatures, units } = question
  const legendRoom = LEGEND_GAP + LEGEND_SIZE.heightMm
  const area = { ...SCREEN, heightMm: SCREEN.heightMm - legendRoom }
  const section = fitHeatSection(hive, plane, question, area)
  const scale = deriveHeatScale(temperatures, units.temperature)
  const legend = heatLegend(scale, temperatures, units.temperature)
  // Under the hive, not under the labels at its left.
  const at = { x: section.left, y: section.heightMm + LEGEND_GAP }
  return {
    ...section,
    widthMm: Math.max(section.widthMm, at.x + LEGEND_SIZE.widthMm),
    heightMm: section.heightMm + legendRoom,
    items: [...section.items, ...placeDrawing({ ...LEGEND_SIZE, items: legend }, at)],
  }
}
