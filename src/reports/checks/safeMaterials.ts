import { materialById } from '../../catalog/materials.ts'
import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { presentIds } from './presentIds.ts'
import { proposeFix } from './proposeFix.ts'

/** Glued for outdoors, bare on both faces, and in every list. */
const SAFE = 'plywood-softwood'

/** What bees walk on must be safe for them bare (rule R30): linings, covers, followers, divider. */
export const checkSafeMaterials = ({
  design,
  hive,
}: {
  readonly design: Pick<Design, 'walls' | 'lid' | 'floor' | 'cavity'>
  readonly hive: Pick<Hive, 'parts'>
}): readonly Check[] => {
  const { cavity } = design
  const hasBoards = cavity.followers !== 'none' || cavity.divider === 'fitted'
  const faces = [
    { field: 'walls.liningMaterial', id: design.walls.liningMaterial, part: 'front-wall/lining' },
    { field: 'floor.liningMaterial', id: design.floor.liningMaterial, part: 'floor/lining' },
    { field: 'lid.liningMaterial', id: design.lid.liningMaterial, part: 'lid/lining' },
    ...(hasBoards
      ? [{ field: 'cavity.boardMaterial', id: cavity.boardMaterial, part: 'divider/sheet' }]
      : []),
    ...(cavity.closure === 'touching'
      ? []
      : [{ field: 'cavity.coverMaterial', id: cavity.coverMaterial, part: 'covers/board-1' }]),
  ]
  const unsafe = faces.filter(({ id }) => materialById(id).insideHive !== 'bare')
  const names = [...new Set(unsafe.map(({ id }) => materialById(id).name))]
  return [
    assess({
      id: 'safe-linings',
      title: 'Faces that are not safe for bees',
      quantity: 'count',
      measured: unsafe.length,
      band: { high: 0, fixAbove: 0 },
      why:
        names.length === 0
          ? 'Bees lick, gnaw and walk on every inner face, so it must be bare and safe.'
          : `Bees lick, gnaw and walk on every inner face; not safe bare: ${names.join(', ')}.`,
      source: 'Healthy Building Network, 2015; Delaware state apiarist, 2024; common practice',
      fix: () =>
        proposeFix(
          'Use softwood plywood for these faces',
          unsafe.map(({ field }) => ({ field, value: SAFE })),
        ),
      partIds: presentIds(
        hive.parts,
        unsafe.map(({ part }) => part),
      ),
    }),
  ]
}
