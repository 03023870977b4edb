import type { FrameDesign } from '../../design/schema.ts'
import type { Part } from '../../hive/part.ts'
import { partMassKg } from '../shop/partMass.ts'
import { combAreaDm2 } from './combArea.ts'
import { combWaxKg, honeyKg } from './combContents.ts'

/** One whole frame full of capped honey, kg; without the bees on it (0.3 to 0.6 kg). */
export interface FullFrame {
  readonly combDm2: number
  readonly woodKg: number
  readonly waxKg: number
  readonly honeyKg: number
  readonly totalKg: number
}

/** Weighs a frame of the hive; its wood is 0 when no frames hang in it. */
export const weighFullFrame = (frame: FrameDesign, parts: readonly Part[]): FullFrame => {
  let frames = 0
  let woodKg = 0
  for (const part of parts) {
    if (part.motion !== 'frame') continue
    frames = Math.max(frames, (part.index ?? 0) + 1)
    // Foundation is part of the comb's wax below.
    if (part.material !== 'beeswax-foundation') woodKg += partMassKg(part)
  }
  const combDm2 = combAreaDm2(frame)
  const each = {
    woodKg: frames === 0 ? 0 : woodKg / frames,
    waxKg: combWaxKg(combDm2),
    honeyKg: honeyKg(combDm2),
  }
  return { combDm2, ...each, totalKg: each.woodKg + each.waxKg + each.honeyKg }
}
