import { findContact, type Member } from './contact.ts'
import { type FoundJoints, type Joint, jointOf } from './joints.ts'
import type { Members } from './members.ts'

/** Bearers under the end walls, legs under the bearers, braces and ties between the legs. */
export const standJoints = (members: Members): FoundJoints => {
  const joints: Joint[] = []
  const legs = members.named('stand', 'leg-')
  const cross = members.named('stand', 'brace-', 'tie-')
  for (const end of ['left', 'right']) {
    const bearer = members.find(`stand/bearer-${end}`)
    const rail = members.find(`${end}-wall/rail-low`)
    if (bearer && rail) joints.push(...jointOf(findContact('bearer', [bearer, rail], 'y', 1)))
    if (bearer) {
      for (const leg of legs) joints.push(...jointOf(findContact('stand', [bearer, leg], 'y', -1)))
    }
  }
  for (const piece of cross) {
    const wanted = new Set(piece.part.fixedTo)
    for (const other of [...legs, ...cross]) {
      if (wanted.has(other.part.id)) joints.push(...jointOf(between(other, piece)))
    }
  }
  return { joints, glued: [] }
}

/** Through a leg into the end of a brace, or through a brace that lies on a tie. */
const between = (support: Member, piece: Member) => {
  const { grain } = piece.part
  if (grain === 'none') return undefined
  const lies = Math.abs(piece.box.y0 - support.box.y1) < 0.01
  if (lies) return findContact('stand', [piece, support], 'y', -1)
  const isBelow = grain === 'x' ? support.box.x0 < piece.box.x0 : support.box.z0 < piece.box.z0
  const square = findContact('stand', [support, piece], grain, isBelow ? 1 : -1)
  if (square !== undefined) return square
  // A splayed leg meets its tie at a slant; both are sized as they are sawn.
  return findContact('stand', [support, piece], grain, isBelow ? 1 : -1, {
    thicknesses: [support.part.size.thickness, piece.part.size.length],
  })
}
