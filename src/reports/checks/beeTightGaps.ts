import type { Design } from '../../design/schema.ts'
import { solidBounds } from '../../geometry/solid.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess, type Band } from './assess.ts'
import type { Check } from './check.ts'
import { presentIds } from './presentIds.ts'
import { proposeFix } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'lid'>
  readonly hive: Pick<Hive, 'parts'>
}

/** A worker passes 4.1 mm, the gap of an excluder; 3 mm leaves room for wood that moves. */
const BEE_TIGHT: Band = { high: 3, fixAbove: 3 }
const SOURCE = 'derived: a worker passes 4.1 mm (excluder gap)'
const WALLS = ['front-wall', 'back-wall', 'left-wall', 'right-wall'] as const

/** Gaps that are no entrance (rule R25): under the lid's rim, and between walls and floor. */
export const checkBeeTightGaps = (context: Context): readonly Check[] => [
  checkRim(context),
  ...checkFloorSeal(context),
]

const checkRim = ({ design, hive }: Context): Check =>
  assess({
    id: 'rim-gap',
    title: 'Gap between lid rim and wall',
    quantity: 'length',
    measured: design.lid.rimClearanceMm,
    band: BEE_TIGHT,
    why: 'Robbers and wasps find any gap that a bee can pass, and none of them is guarded.',
    source: SOURCE,
    fix: () =>
      proposeFix('Make the rim clearance 2.5 mm', [{ field: 'lid.rimClearanceMm', value: 2.5 }]),
    partIds: presentIds(hive.parts, ['lid/rim-front', 'lid/rim-back']),
  })

/** The floor's upper face is at 0; the lowest board of each wall has to come down to it. */
const checkFloorSeal = ({ hive }: Context): readonly Check[] => {
  const lowest = new Map<string, number>()
  for (const { group, solids } of hive.parts) {
    if (!WALLS.some((wall) => wall === group)) continue
    for (const solid of solids) {
      const { y0 } = solidBounds(solid)
      lowest.set(group, Math.min(lowest.get(group) ?? y0, y0))
    }
  }
  if (lowest.size === 0) return []
  return [
    assess({
      id: 'floor-seal',
      title: 'Gap between walls and floor',
      quantity: 'length',
      measured: Math.max(0, ...lowest.values()),
      band: BEE_TIGHT,
      why: 'A floor that does not close up to the walls is a second entrance without guards.',
      source: SOURCE,
      partIds: presentIds(hive.parts, ['floor/lining', 'front-wall/lining']),
    }),
  ]
}
