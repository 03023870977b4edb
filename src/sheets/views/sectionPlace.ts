import { materialById } from '../../catalog/materials.ts'
import type { Hive } from '../../hive/hive.ts'
import { cutParts } from './cutParts.ts'

/** Groups whose insulation a telling section should cut. */
const INSULATED = ['front-wall', 'back-wall', 'lid', 'floor'] as const

/**
 * Where to cut across the hive: at the middle of the frame nearest to the middle of the hive at which
 * the plane meets insulation in both long walls, lid and floor and not a rail; when no frame offers
 * that, where most of them are met. Model mm along x.
 */
export const sectionPlace = (hive: Hive): number => {
  const middle = hive.dimensions.cavityLength / 2
  const places = [...hive.dimensions.frameCentres, middle].sort(
    (a, b) => Math.abs(a - middle) - Math.abs(b - middle) || a - b,
  )
  let [best, bestScore] = [middle, -1]
  for (const at of places) {
    const met = new Set(
      cutParts(hive.parts, { axis: 'x', at })
        .filter((c) => materialById(c.part.material).family === 'insulation')
        .map((c) => c.part.group),
    )
    const score = INSULATED.filter((group) => met.has(group)).length
    if (score > bestScore) [best, bestScore] = [at, score]
    if (score === INSULATED.length) break
  }
  return best
}
