import type { Hive } from '../../hive/hive.ts'
import type { Part } from '../../hive/part.ts'
import { partMassKg } from '../shop/partMass.ts'
import { GRAVITY } from './hingedPull.ts'
import type { Lift } from './keeperReport.ts'

/**
 * What is carried by hand alone in a season: a full frame, the heaviest cover board and follower, the
 * divider. Heaviest first.
 */
export const findCarriedLifts = (parts: Hive['parts'], fullFrame: Lift): readonly Lift[] => {
  const covers = parts.filter((part) => part.motion === 'cover')
  const cover = heaviest(covers.map((part) => ({ name: part.name, massKg: partMassKg(part) })))
  const follower = heaviest(weighFollowers(parts))
  const divider = parts.filter((p) => p.group === 'boards' && p.motion === 'fixed')
  return [
    fullFrame,
    ...(cover ? [cover] : []),
    ...(follower ? [follower] : []),
    ...(divider.length > 0 ? [{ name: 'Divider', massKg: sumMass(divider) }] : []),
  ].sort(byMass)
}

/** What the hand feels of the boards that a hinge carries: their pull as a mass. */
export const findHingedLifts = (pull: {
  readonly lidN: number
  readonly floorN: number
}): readonly Lift[] =>
  [
    { name: 'Lid, at its handle (hinged)', massKg: pull.lidN / GRAVITY },
    { name: 'Floor, at its free edge (hinged)', massKg: pull.floorN / GRAVITY },
  ].filter(({ massKg }) => massKg > 0)

/** Heaviest first. */
export const byMass = (a: Lift, b: Lift): number => b.massKg - a.massKg

const weighFollowers = (parts: readonly Part[]): readonly Lift[] => {
  const kgByIndex = new Map<number, number>()
  for (const part of parts) {
    if (part.motion !== 'follower') continue
    const index = part.index ?? 0
    kgByIndex.set(index, (kgByIndex.get(index) ?? 0) + partMassKg(part))
  }
  return [...kgByIndex.values()].map((massKg) => ({ name: 'Follower board', massKg }))
}

const sumMass = (parts: readonly Part[]): number =>
  parts.reduce((sum, part) => sum + partMassKg(part), 0)

const heaviest = (lifts: readonly Lift[]): Lift | undefined =>
  lifts.reduce<Lift | undefined>((a, b) => (a && a.massKg >= b.massKg ? a : b), undefined)
