import { formatNumber } from '../../../units/number.ts'
import type { BaselineAnswer } from './heatComparisons.ts'

/** A strong winter colony, kg; the mass that the published ratios are read for here. */
const BEES_KG = 2

/**
 * How near the baselines come to published figures, and why they differ, a paragraph each. Ratios need
 * no unit of the user's. None without the plain box and the trunk. Published: Mitchell 2016, Int J
 * Biometeorol 60:629-638, abstract: hives lose 4 to 7 times as much as a tree nest; mass of bees over
 * conductance is below 0.8 kg·K/W in wooden hives and over 5 in trees.
 */
export const publishedHomesWords = (
  thisWPerK: number,
  baselines: readonly Pick<BaselineAnswer, 'id' | 'conductanceWPerK'>[],
): readonly string[] => {
  const lossOf = (id: string) => baselines.find((b) => b.id === id)?.conductanceWPerK
  const [box, trunk] = [lossOf('plain-box'), lossOf('trunk')]
  if (box === undefined || trunk === undefined) return []
  const massRatio = (wPerK: number): string => formatNumber(BEES_KG / wPerK, 1)
  return [
    'Mitchell (2016, International Journal of Biometeorology 60, 629) found that common hives lose 4 ' +
      `to 7 times as much as a tree hollow. Here the plain box loses ${formatNumber(box / trunk, 1)} ` +
      'times as much as the trunk, and has more room.',
    'He also divides the mass of the bees by the conductance: under 0.8 kg·K/W in wooden hives, over ' +
      `5 in trees. With ${BEES_KG} kg of bees it is ${massRatio(box)} in the plain box, ` +
      `${massRatio(trunk)} in the trunk and ${massRatio(thisWPerK)} in this hive.`,
    'The trunk comes out colder here than published. Such figures are the power of a heater over the ' +
      'warmth near the top, where warm air gathers; here all the air inside is equally warm, and the ' +
      'wood of the trunk is moist. So hold the homes in this list against each other.',
  ]
}
