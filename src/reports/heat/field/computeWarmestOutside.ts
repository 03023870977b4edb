import type { SurfaceFaces } from '../../../solvers/conduction/fieldAnswer.ts'
import { OUTSIDE } from './hiveHeatModel.ts'

/**
 * How warm the outer skin gets, as a share of the way from the air outside to the air inside: 99 % of
 * the area that the air outside touches is no warmer than this. The last hundredth is left out because
 * the rims of openings, which are small and much warmer, would set the scale for all the rest. Face by
 * face, each at its mean; 0 when the air outside touches nothing.
 */
export const computeWarmestOutside = (
  faces: Pick<SurfaceFaces, 'count' | 'areaM2' | 'environment' | 'meanC'>,
): number => {
  const outside: { readonly share: number; readonly areaM2: number }[] = []
  for (let i = 0; i < faces.count; i++) {
    if (faces.environment[i] !== OUTSIDE) continue
    outside.push({ share: faces.meanC[i] ?? 0, areaM2: faces.areaM2[i] ?? 0 })
  }
  outside.sort((a, b) => b.share - a.share)
  // From the warmest down, until what is left out would be more than the hundredth.
  const totalM2 = outside.reduce((sum, { areaM2 }) => sum + areaM2, 0)
  let warmerM2 = 0
  for (const { share, areaM2 } of outside) {
    warmerM2 += areaM2
    if (warmerM2 > LEFT_OUT * totalM2) return share
  }
  return 0
}

const LEFT_OUT = 0.01
