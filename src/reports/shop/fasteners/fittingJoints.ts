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

const leafJoints = (members: Members): readonly Joint[] => {
  const joints: Joint[] = []
  const floorRails = members.named('floor', 'rail-')
  for (const side of ['front', 'back'] as const) {
    const leaves = members.in('hardware').filter((m) => m.box.z0 > 0 === (side === 'front'))
    if (leaves.length === 0) continue
    const boards = members.named(`${side}-wall`, 'cladding')
    const timbers = members.named(`${side}-wall`, 'rail-', 'stud-', 'block-')
    for (const leaf of leaves) {
      const isBehind = (m: Member): boolean => isSeenThrough(leaf, m)
      const behind = { boards: boards.filter(isBehind), timbers: timbers.filter(isBehind) }
      joints.push(...jointsOfLeaf(members, leaf, side, { ...behind, floorRails }))
    }
  }
  return joints
}

/** Whether a part lies behind a leaf, seen from outside the wall. */
const isSeenThrough = ({ box: a }: Member, { box: b }: Member): boolean =>
  a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1

const jointsOfLeaf = (
  members: Members,
  leaf: Member,
  side: 'front' | 'back',
  behind: Readonly<Record<'boards' | 'timbers' | 'floorRails', readonly Member[]>>,
): readonly Joint[] => {
  const { id } = leaf.part
  const count = id.includes('hinge') ? HINGE_HOLES : LATCH_HOLES
  const on = (pile: readonly Member[]): Contact | undefined =>
    findContact('leaf', [leaf, ...pile], 'z', side === 'front' ? -1 : 1, { count })
  const { boards, timbers, floorRails } = behind
  if (id.startsWith('hardware/lid-hinge')) {
    const rail = members.find('rim/hinge-rail')
    const rim = members.find(`lid/rim-${side}`)
    const deep = rail ? boards.flatMap((b) => timbers.map((t) => on([rail, b, t]))) : []
    return [...jointOf(rim && on([rim])), ...jointOf(rail && on([rail]), ...deep)]
  }
  const walls = boards.flatMap((b) => [on([b]), ...timbers.map((t) => on([b, t]))])
  return [...jointOf(...walls), ...jointOf(...floorRails.map((r) => on([r])))]
}

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
