import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { proposeFix } from './proposeFix.ts'

/** Room round a follower, and its thickness when it is plain (rule R27). */
export const checkFollowers = ({
  design,
  hive,
}: {
  readonly design: Pick<Design, 'cavity'>
  readonly hive: Pick<Hive, 'row' | 'parts'>
}): readonly Check[] => {
  if (!hive.row.some(({ kind }) => kind === 'follower')) return []
  const { cavity } = design
  const partIds = hive.parts.filter(({ motion }) => motion === 'follower').slice(0, 3)
  const common = { quantity: 'length', partIds: partIds.map(({ id }) => id) } as const
  const thickness =
    cavity.followerForm === 'insulated'
      ? []
      : [
          assess({
            ...common,
            id: 'follower-thickness',
            title: 'Follower thickness',
            measured: cavity.followerThicknessMm,
            band: { low: 9 },
            why: 'A thin board warps in the damp and then jams or leaves a gap.',
            source: 'Bertrand, La conduite du rucher, p. 239: 10 to 12 mm; plywood 9 mm',
            fix: () =>
              proposeFix('Make the follower 12 mm thick', [
                { field: 'cavity.followerThicknessMm', value: 12 },
              ]),
          }),
        ]
  return [
    assess({
      ...common,
      id: 'follower-side-gap',
      title: 'Gap beside the follower',
      measured: cavity.followerSideGapMm,
      band: { low: 6, high: 9 },
      why: 'Bees glue a follower with a narrow gap to the wall and build comb in a wide one.',
      source: 'theapiarist.org, dummy boards: 8 mm each side',
      fix: () =>
        proposeFix('Make the gap beside the follower 7 mm', [
          { field: 'cavity.followerSideGapMm', value: 7 },
        ]),
    }),
    assess({
      ...common,
      id: 'follower-bottom-gap',
      title: 'Gap under the follower',
      measured: cavity.followerBottomGapMm,
      band: { low: 10, high: 12.5 },
      why: 'Bees that stray behind the follower come home under it; a wide gap lets warmth out.',
      source: 'Bertrand, La conduite du rucher, p. 277: 10 to 12.5 mm',
      fix: () =>
        proposeFix('Make the gap under the follower 11 mm', [
          { field: 'cavity.followerBottomGapMm', value: 11 },
        ]),
    }),
    ...thickness,
  ]
}
