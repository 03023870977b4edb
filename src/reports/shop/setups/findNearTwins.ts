import type { CutListRow } from '../shopReport.ts'
import type { SetUpReport } from './setUpReport.ts'

/** Sizes nearer than this are one size at the saw, further apart than that no one mixes them up, mm. */
const NEAREST_MM = 0.5
const FURTHEST_MM = 3

/**
 * Pairs of rows of one material and thickness that the eye can't tell apart: one side differs by more
 * than 0.5 and less than 3 mm, and the other by less than 3 mm. Source: build-ability measures, shop
 * custom.
 */
export const findNearTwins = (rows: readonly CutListRow[]): SetUpReport['nearTwins'] => {
  const cut = rows.filter(({ bought }) => !bought)
  const twins: SetUpReport['nearTwins'][number][] = []
  cut.forEach((a, i) => {
    for (let k = i + 1; k < cut.length; k += 1) {
      const b = cut[k]
      if (b === undefined || a.material !== b.material || a.thicknessMm !== b.thicknessMm) continue
      const differenceMm = Math.max(
        Math.abs(a.lengthMm - b.lengthMm),
        Math.abs(a.widthMm - b.widthMm),
      )
      const isTwin = differenceMm > NEAREST_MM && differenceMm < FURTHEST_MM
      if (isTwin) twins.push({ labels: [a.label, b.label], differenceMm })
    }
  })
  return twins
}
