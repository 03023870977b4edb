import { findContact } from './contact.ts'
import { type FoundJoints, type Joint, jointOf } from './joints.ts'
import type { Members } from './members.ts'

/** Rim boards round the lid, and its handle. */
export const lidJoints = (members: Members): FoundJoints => ({
  joints: [...rimJoints(members), ...handleJoints(members)],
  glued: [],
})

const SIDES = [
  { id: 'front', axis: 'z', way: -1 },
  { id: 'back', axis: 'z', way: 1 },
  { id: 'left', axis: 'x', way: 1 },
  { id: 'right', axis: 'x', way: -1 },
] as const

const rimJoints = (members: Members): readonly Joint[] => {
  const timbers = members.named('lid', 'rail-', 'stud-')
  return SIDES.flatMap(({ id, axis, way }) => {
    const board = members.find(`lid/rim-${id}`)
    if (board === undefined) return []
    const onLid = timbers
      .filter((m) => m.part.grain !== axis)
      .flatMap((m) => jointOf(findContact('rim', [board, m], axis, way)))
    const ends =
      axis === 'z'
        ? members
            .named('lid', 'rim-left', 'rim-right')
            .flatMap((end) => jointOf(findContact('butt', [board, end], axis, way)))
        : []
    return [...onLid, ...ends]
  })
}

const handleJoints = (members: Members): readonly Joint[] => {
  const handle = members.find('lid/handle')
  if (handle === undefined) return []
  return (['front', 'back'] as const).flatMap((side) => {
    const board = members.find(`lid/rim-${side}`)
    return board
      ? jointOf(findContact('handle', [board, handle], 'z', side === 'front' ? 1 : -1))
      : []
  })
}
