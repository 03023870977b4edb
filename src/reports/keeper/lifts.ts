import type { Hive } from '../../hive/hive.ts'
import type { Part } from '../../hive/part.ts'
import { partMassKg } from '../shop/partMass.ts'
import { GRAVITY } from './hingedPull.ts'
import type { Lift } from './keeperReport.ts'

/**
 * What is lifted in a season, heaviest first: a full frame, the heaviest cover board and follower, the
 * divider, and what lid and floor weigh in the hand that opens or closes them.
 */
export const findLifts = (
  parts: Hive['parts'],
  known: {
    readonly frameName: string
    readonly fullFrameKg: number
    readonly lidPullN: number
    readonly floorPullN: number
  },
): readonly Lift[] => {
  const lifts: Lift[] = [{ name: known.frameName, massKg: known.fullFrameKg }]
  const covers = parts.filter((part) => part.motion === 'cover')
  add(lifts, heaviest(covers.map((part) => ({ name: part.name, massKg: partMassKg(part) }))))
  add(lifts, heaviest(weighFollowers(parts)))
  const dividerKg = sumMass(parts.filter((p) => p.group === 'boards' && p.motion === 'fixed'))
  if (dividerKg > 0) lifts.push({ name: 'Divider', massKg: dividerKg })
  if (known.lidPullN > 0) {
    lifts.push({ name: 'Lid, at its handle (hinged)', massKg: known.lidPullN / GRAVITY })
  }
  if (known.floorPullN > 0) {
    lifts.push({ name: 'Floor, at its free edge (hinged)', massKg: known.floorPullN / GRAVITY })
  }
  return lifts.sort((a, b) => b.massKg - a.massKg)
}

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

const add = (lifts: Lift[], lift: Lift | undefined): void => {
  if (lift !== undefined) lifts.push(lift)
}
