import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { ShopReport } from '../shop/computeShop.ts'
import { floorDropLimitDeg } from './floorDrop.ts'
import { weighFullFrame } from './fullFrame.ts'
import { hingedPullN } from './hingedPull.ts'
import type { KeeperReport, Lift } from './keeperReport.ts'
import { byMass, findCarriedLifts, findHingedLifts } from './lifts.ts'

export type { KeeperReport } from './keeperReport.ts'

/** What the hive asks of the keeper's back and hands. Linear in the number of parts. */
export const computeKeeper = (
  design: Pick<Design, 'frame'>,
  hive: Pick<Hive, 'parts' | 'hinges' | 'dimensions' | 'row'>,
  shop: Pick<ShopReport, 'massKg'>,
): KeeperReport => {
  const { frame } = design
  const full = weighFullFrame(frame, hive.parts)
  const hingeOf = (motion: 'lid' | 'floor') => hive.hinges.find((hinge) => hinge.motion === motion)
  const lidForceN = hingedPullN(hive.parts, hingeOf('lid'))
  const fullFrame: Lift = {
    name: frame.form === 'split' ? 'Whole split frame, full of honey' : 'Frame full of honey',
    massKg: full.totalKg,
  }
  const carried = findCarriedLifts(hive.parts, fullFrame)
  const hinged = findHingedLifts({
    lidN: lidForceN,
    floorN: hingedPullN(hive.parts, hingeOf('floor')),
  })
  const frames = hive.row.filter(({ kind }) => kind === 'frame').length
  return {
    lifts: [...carried, ...hinged].sort(byMass),
    heaviestLift: carried[0] ?? fullFrame,
    honeyPerFrameKg: full.honeyKg,
    combAreaPerFrameDm2: full.combDm2,
    lidForceN,
    // The empty hive's frames are taken out and put back full.
    fullMassKg: shop.massKg.empty - shop.massKg.frames + frames * full.totalKg,
    floorDropLimitDeg: floorDropLimitDeg(hive),
  }
}
