import { solidBounds } from '../../geometry/solid.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'

/**
 * The gaps round the divider between two colonies (rule R26): beside and under it, over it, and
 * beside its ears, where a queen walks round under the lugs. The widest of them.
 */
export const checkDivider = ({
  hive,
}: {
  readonly hive: Pick<Hive, 'row' | 'parts' | 'dimensions'>
}): readonly Check[] => {
  if (!hive.row.some(({ kind }) => kind === 'divider')) return []
  const pieces = hive.parts.filter(({ group, motion }) => group === 'boards' && motion === 'fixed')
  return [
    assess({
      id: 'divider-gap',
      title: 'Gap round the divider',
      quantity: 'length',
      measured: widestGap(hive, pieces),
      band: { high: 1, fixAbove: 1 },
      why: 'Through any gap the two queens meet, and one of them dies.',
      source: 'D. Cushman, division board: 1 mm each side, floor strip, lug spaces blocked',
      partIds: pieces.map(({ id }) => id),
    }),
  ]
}

/** Without a divider in place the whole width is open. mm. */
const widestGap = ({ dimensions: d }: Pick<Hive, 'dimensions'>, pieces: Hive['parts']): number => {
  const boxes = pieces.flatMap(({ solids }) => solids.map(solidBounds))
  const inner = boxes.filter(({ y0 }) => y0 < d.restHeight - 1)
  if (inner.length === 0) return d.cavityWidth
  const half = d.cavityWidth / 2
  const highest = Math.max(...boxes.map(({ y1 }) => y1))
  return Math.max(
    Math.min(...inner.map(({ z0 }) => z0)) + half,
    half - Math.max(...inner.map(({ z1 }) => z1)),
    Math.min(...inner.map(({ y0 }) => y0)),
    d.coverLedgeHeight - highest,
    Math.min(...boxes.map(({ z0 }) => z0)) + half + d.seatWidth,
    half + d.seatWidth - Math.max(...boxes.map(({ z1 }) => z1)),
  )
}
