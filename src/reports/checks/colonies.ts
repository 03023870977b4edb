import type { Hive } from '../../hive/hive.ts'

/** One colony's room in the row, along x, and the frames that hang in it. */
export interface ColonyRoom {
  /** Counted from 1 at the left. */
  readonly colony: number
  readonly frames: number
  readonly x0: number
  readonly x1: number
}

/** The colonies' rooms from the left: one, or one on each side of the divider. */
export const colonyRooms = ({ row }: Pick<Hive, 'row'>): readonly ColonyRoom[] => {
  const rooms: ColonyRoom[] = []
  let frames = 0
  let x0 = row[0]?.x0 ?? 0
  for (const item of row) {
    if (item.kind === 'frame') frames += 1
    if (item.kind !== 'divider') continue
    rooms.push({ colony: rooms.length + 1, frames, x0, x1: item.x0 })
    frames = 0
    x0 = item.x1
  }
  return [...rooms, { colony: rooms.length + 1, frames, x0, x1: row.at(-1)?.x1 ?? x0 }]
}
