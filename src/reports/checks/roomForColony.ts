import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { KeeperReport } from '../keeper/computeKeeper.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { colonyRooms } from './colonies.ts'
import { proposeFix } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'cavity' | 'colony'>
  readonly hive: Pick<Hive, 'row'>
  readonly keeper: Pick<KeeperReport, 'honeyPerFrameKg' | 'combAreaPerFrameDm2'>
}

const MM2_PER_DM2 = 1e4
/** 2000 eggs a day for 21 days are 42,000 cells; with pollen, honey, drones and waste 72,000. */
const BROOD_DM2 = 51
const BROOD_AND_FOOD_DM2 = 88

/** Whether each colony has comb for its brood (rule R19) and its winter stores (R21). */
export const checkRoomForColony = (context: Context): readonly Check[] => {
  const fewest = Math.min(...colonyRooms(context.hive).map(({ frames }) => frames))
  return [checkComb(context, fewest), checkStores(context, fewest)]
}

const checkComb = (context: Context, frames: number): Check => {
  const { combAreaPerFrameDm2 } = context.keeper
  const neededDm2 = context.design.colony.strength === 'strong' ? BROOD_AND_FOOD_DM2 : BROOD_DM2
  return assess({
    id: 'comb-area',
    title: 'Comb for each colony',
    quantity: 'area',
    measured: frames * combAreaPerFrameDm2 * MM2_PER_DM2,
    band: { low: neededDm2 * MM2_PER_DM2 },
    why: 'A queen without room to lay makes the colony swarm.',
    source: 'Dorchester and Weymouth BKA, hive sizes; 2.309 n² cells (Betts, Bee World, 1938)',
    fix: () => moreFrames(context, neededDm2 / combAreaPerFrameDm2),
  })
}

const checkStores = (context: Context, frames: number): Check => {
  const { honeyPerFrameKg } = context.keeper
  const { storesKg } = context.design.colony
  return assess({
    id: 'stores-room',
    title: 'Room for winter stores, for each colony',
    quantity: 'mass',
    measured: frames * honeyPerFrameKg,
    band: { low: storesKg, fixBelow: storesKg },
    why: 'If all its combs together cannot hold the winter stores, the colony starves.',
    source: '1 kg of honey in 3 dm² of comb (Bertrand, La conduite du rucher, p. 168)',
    fix: () => moreFrames(context, storesKg / honeyPerFrameKg),
  })
}

/** With a divider the number of frames alone does not say on which side they hang. */
const moreFrames = ({ design }: Context, needed: number) => {
  const { cavity } = design
  if (cavity.divider === 'fitted' || !Number.isFinite(needed)) return undefined
  const frames = Math.ceil(needed - 1e-9)
  const places = Math.max(cavity.frames, frames)
  return proposeFix(`Hang ${frames} frames`, [
    { field: 'cavity.frames', value: places },
    { field: 'cavity.emptyPlaces', value: Math.min(cavity.emptyPlaces, places - frames) },
  ])
}
