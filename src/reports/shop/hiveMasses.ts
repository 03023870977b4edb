import type { Part } from '../../hive/part.ts'
import { partMassKg } from './partMass.ts'
import type { HiveMasses } from './shopReport.ts'

/** The mass that each part counts to: what moves together, and what stays put. */
const shareOf = (part: Part): Exclude<keyof HiveMasses, 'empty'> => {
  if (part.motion === 'lid') return 'lid'
  if (part.motion === 'floor') return 'floor'
  if (part.motion === 'frame') return 'frames'
  return part.group === 'stand' ? 'stand' : 'body'
}

/** Sums the masses of all parts, each part once, kg. Cover boards and followers count to the body. */
export const hiveMasses = (parts: readonly Part[]): HiveMasses => {
  const sums = { lid: 0, floor: 0, body: 0, frames: 0, stand: 0 }
  for (const part of parts) sums[shareOf(part)] += partMassKg(part)
  return { ...sums, empty: sums.lid + sums.floor + sums.body + sums.frames + sums.stand }
}
