import type { Box } from '../../../geometry/box.ts'
import type { Hive } from '../../../hive/hive.ts'
import { type Contact, type ContactExtra, findContact, type Member } from './contact.ts'
import { type FoundJoints, type GlueJoint, type Joint, jointOf } from './joints.ts'
import type { Members } from './members.ts'

/** Leaves of hinges and latches with their holes, landing boards, and followers. */
export const fittingJoints = (hive: Hive, members: Members): FoundJoints => {
  const followers = followerJoints(members)
  return {
    joints: [...leafJoints(members), ...landingJoints(hive, members), ...followers.joints],
    glued: followers.glued,
  }
}

/** Holes of one leaf: usual for butt hinges of 75 mm, and for toggle latches (common practice). */
const HINGE_HOLES = 3
const LATCH_HOLES = 2

const leafJoints = (members: Members): readonly Joint[] =>
  members.in('hardware').flatMap((leaf) => {
    const { id } = leaf.part
    const way = leaf.box.z0 > 0 ? -1 : 1
    const count = id.includes('hinge') ? HINGE_HOLES : LATCH_HOLES
    const side = leaf.box.z0 > 0 ? 'front' : 'back'
    const on = (...pile: readonly (Member | undefined)[]): Contact | undefined => {
      const real = pile.filter((m) => m !== undefined)
      return real.length === pile.length
        ? findContact('leaf', [leaf, ...real], 'z', way, { count })
        : undefined
    }
    const boards = members.named(`${side}-wall`, 'cladding')
    const timbers = members.named(`${side}-wall`, 'rail-', 'stud-', 'block-')
    if (id.startsWith('hardware/lid-hinge')) {
      const rail = members.find('rim/hinge-rail')
      const deep = boards.flatMap((b) => timbers.map((t) => on(rail, b, t)))
      return [...jointOf(on(members.find(`lid/rim-${side}`))), ...jointOf(on(rail), ...deep)]
    }
    const walls = boards.flatMap((b) => [on(b), ...timbers.map((t) => on(b, t))])
    const floor = members.named('floor', 'rail-').map((r) => on(r))
    return [...jointOf(...walls), ...jointOf(...floor)]
  })

/** A landing board's thin inner edge against the cladding. */
const landingJoints = (hive: Hive, members: Members): readonly Joint[] =>
  members.named('openings', 'landing-').flatMap((landing) => {
    const solid = landing.part.solids[0]
    const board = members.find(landing.part.fixedTo[0] ?? '')
    if (solid?.kind !== 'prism' || board === undefined) return []
    const axis = solid.axis === 'x' ? 'z' : 'x'
    const isLow = axis === 'z' ? landing.box.z0 < board.box.z0 : landing.box.x0 < board.box.x0
    const wall =
      axis === 'z' ? (isLow ? board.box.z0 : board.box.z1) : isLow ? board.box.x0 : board.box.x1
    const edge = solid.polygon.filter((p) => Math.abs(p.u - wall) < 0.01).map((p) => p.v)
    if (edge.length < 2) return []
    const within: Box = { ...EVERYWHERE, y0: Math.min(...edge), y1: Math.max(...edge) }
    const inner: Member = { ...landing, box: { ...landing.box, y0: within.y0, y1: within.y1 } }
    const extra: ContactExtra = { within, holes: hive.openings.map((o) => o.tunnel) }
    return jointOf(findContact('landing', [board, inner], axis, isLow ? -1 : 1, extra))
  })

const EVERYWHERE: Box = { x0: -1e6, x1: 1e6, y0: -1e6, y1: 1e6, z0: -1e6, z1: 1e6 }

const followerJoints = (members: Members): FoundJoints => {
  const joints: Joint[] = []
  const glued: GlueJoint[] = []
  for (let n = 1; members.in(`follower-${n}`).length > 0; n += 1) {
    const id = `follower-${n}`
    const bar = members.find(`${id}/top-bar`)
    const below = members.find(`${id}/strip-top`) ?? members.find(`${id}/sheet`)
    if (bar && below) joints.push(...jointOf(findContact('follower', [bar, below], 'y', -1)))
    const strips = members.named(id, 'strip-')
    for (const skin of members.named(id, 'skin-')) {
      const way = skin.part.id.endsWith('left') ? 1 : -1
      for (const strip of strips) {
        joints.push(...jointOf(findContact('follower', [skin, strip], 'x', way)))
      }
    }
    if (strips.length > 0) {
      const ends = strips.reduce((sum, { part }) => sum + part.size.width * part.size.thickness, 0)
      glued.push({ parts: strips.map((m) => m.part), areaMm2: ends })
    }
  }
  return { joints, glued }
}
