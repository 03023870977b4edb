import type { Design } from '../../design/schema.ts'
import { boundingBox } from '../../geometry/box.ts'
import { solidBounds } from '../../geometry/solid.ts'
import type { Hive } from '../../hive/hive.ts'
import type { KeeperReport } from '../keeper/computeKeeper.ts'
import { GRAVITY } from '../keeper/hingedPull.ts'
import { assess } from './assess.ts'
import type { Check, FieldChange } from './check.ts'
import { type LighterSheet, lighterSheets } from './lighterLid.ts'
import { presentIds } from './presentIds.ts'
import { proposeFix } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'lid' | 'keeper'>
  readonly hive: Pick<Hive, 'parts'>
  readonly keeper: Pick<KeeperReport, 'lidForceN'>
}

const EASY_N = 100
const HARD_N = 150
/** The sheets' middles are only nearly over the lid's middle. */
const MARGIN = 0.985

/** What each person pulls to start the lid, as the mass that weighs as much (rule S18). */
export const checkLidPull = (context: Context): readonly Check[] => {
  const { people } = context.design.keeper
  const { lidForceN } = context.keeper
  return [
    assess({
      id: 'lid-pull',
      title: 'Pull to open the lid',
      quantity: 'mass',
      measured: lidForceN / people / GRAVITY,
      band: { high: EASY_N / GRAVITY, fixAbove: HARD_N / GRAVITY },
      why: 'The lid is opened with one hand while the other holds the smoker.',
      source: 'project limits 100 and 150 N, after HSE push and pull guidance',
      fix: () => lightenLid(context),
      partIds: presentIds(context.hive.parts, ['lid/handle', 'roof/cover-sheet']),
    }),
  ]
}

/** Lighter sheets, one after the other, until one hand is enough; else more hands. */
const lightenLid = ({ design, hive, keeper }: Context) => {
  const newtonsPerKg = pullPerKg(hive)
  const aim = EASY_N * design.keeper.people * MARGIN
  let force = keeper.lidForceN
  const taken: LighterSheet[] = []
  for (const sheet of lighterSheets(design.lid, hive.parts)) {
    if (force <= aim) break
    force -= sheet.savedKg * newtonsPerKg
    taken.push(sheet)
  }
  if (force <= aim) {
    const changes: readonly FieldChange[] = taken.flatMap((sheet) => sheet.changes)
    return proposeFix(`Lighten the lid: ${taken.map(({ words }) => words).join(', ')}`, changes)
  }
  const people = Math.ceil(keeper.lidForceN / EASY_N)
  return proposeFix(`Open the lid with ${people} people`, [
    { field: 'keeper.people', value: people },
  ])
}

/** Newtons at the handle for each kg of a sheet that lies over the whole lid. */
const pullPerKg = ({ parts }: Pick<Hive, 'parts'>): number => {
  const lid = parts.filter(({ motion }) => motion === 'lid')
  const handle = lid.find(({ group }) => group === 'hardware')
  if (handle === undefined) return GRAVITY / 2
  const across = boundingBox(
    lid.filter((p) => p !== handle).flatMap((p) => p.solids.map(solidBounds)),
  )
  const hand = boundingBox(handle.solids.map(solidBounds))
  const half = (across.z1 - across.z0) / 2
  // The sheet's middle is over the lid's middle; the hand is further from the hinge than half the lid.
  return (GRAVITY * half) / (half + Math.abs((hand.z0 + hand.z1) / 2 - (across.z0 + across.z1) / 2))
}
