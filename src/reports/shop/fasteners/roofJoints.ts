import type { Box } from '../../../geometry/box.ts'
import type { Solid } from '../../../geometry/solid.ts'
import { findContact, type Member } from './contact.ts'
import type { FamilyId } from './jointFamilies.ts'
import { type FoundJoints, type GlueJoint, type Joint, jointOf } from './joints.ts'
import type { Members } from './members.ts'

/** Sheet metal is thinner than this, felt and rubber on boards is thicker, mm. */
const THICKEST_METAL = 1.2

/** What lies above the lid's insulated panel. Felt and rubber are glued, metal is screwed. */
export const roofJoints = (members: Members): FoundJoints => {
  const skin = members.find('lid/cladding')
  const cover = members.find('roof/cover-sheet')
  const deck = members.find('roof/deck')
  if (skin === undefined || cover === undefined) return { joints: [], glued: [] }
  const rims = members.named('lid', 'rim-')
  const skinOnRims: GlueJoint = {
    parts: [skin.part, ...rims.map((m) => m.part)],
    areaMm2: rims.reduce((sum, m) => sum + m.part.size.length * m.part.size.thickness, 0),
  }
  const isMetal = cover.part.size.thickness < THICKEST_METAL
  if (deck === undefined) {
    // A flat lid: the sheet lies on the top skin, over the lid's own rails.
    const timbers = isMetal ? members.named('lid', 'rail-', 'stud-') : []
    const joints = timbers.flatMap((m) => jointOf(findContact('cover', [cover, skin, m], 'y', -1)))
    return { joints, glued: [skinOnRims] }
  }
  return {
    joints: slopedJoints(members, { skin, deck, cover: isMetal ? cover : undefined }),
    glued: [skinOnRims, ...closerGlue(members, skin, deck)],
  }
}

/** The boards that close the space under the deck are glued to skin, deck and firrings. */
const closerGlue = (members: Members, skin: Member, deck: Member): readonly GlueJoint[] => {
  const firrings = members.named('roof', 'firring-').map((m) => m.part)
  return members.named('roof', 'closer-').map(({ part, box }) => ({
    parts: [part, skin.part, deck.part, ...firrings],
    areaMm2: 2 * part.size.length * (box.z1 - box.z0),
  }))
}

interface Sheets {
  readonly skin: Member
  readonly deck: Member
  readonly cover: Member | undefined
}

/** Firrings down into the lid, deck and sheet metal down into the firrings. */
const slopedJoints = (members: Members, { skin, deck, cover }: Sheets): readonly Joint[] => {
  const rails = members.named('lid', 'rail-')
  const beside = members.named('lid', 'stud-', 'rim-left', 'rim-right')
  const joints: Joint[] = []
  for (const firring of members.named('roof', 'firring-')) {
    const through = (family: FamilyId, above: readonly Member[], rail: Member) =>
      throughFirring(family, [...above, firring, skin], rail, beside)
    for (const rail of rails) joints.push(...through('firring', [], rail))
    joints.push(...rowOnFirring('deck', [deck], firring, DECK_FIRRING))
    if (cover) joints.push(...rowOnFirring('cover', [cover, deck], firring, COVER_FIRRING))
    // At its low end the firring is a shim: the screws go through it into the lid.
    for (const rail of rails) {
      if (thicknessAt(firring, crossing(rail)) >= DECK_FIRRING) continue
      joints.push(...through('deck-end', [deck], rail))
      if (cover) joints.push(...through('cover-end', [cover, deck], rail))
    }
  }
  return joints
}

/** A lower firring holds no screw of the deck or of the sheet by itself, mm. */
const DECK_FIRRING = 27
const COVER_FIRRING = 30

/** How far from the rail a screw may stand along the firring, mm. */
const BESIDE = 15
const EVERYWHERE: Box = { x0: -1e6, x1: 1e6, y0: -1e6, y1: 1e6, z0: -1e6, z1: 1e6 }

const crossing = (rail: Member): number => (rail.box.z0 + rail.box.z1) / 2

/**
 * Where a firring crosses a rail of the lid, one screw goes down through both: into the rail, or at the
 * lid's ends into the stud or the rim board beside it. The last of `above` but one is the firring.
 */
const throughFirring = (
  family: FamilyId,
  above: readonly Member[],
  rail: Member,
  beside: readonly Member[],
): readonly Joint[] => {
  const heights = above.map((m) =>
    m.part.id.startsWith('roof/firring') ? thicknessAt(m, crossing(rail)) : m.part.size.thickness,
  )
  if (heights.includes(0)) return []
  const within: Box = { ...EVERYWHERE, z0: rail.box.z0 - BESIDE, z1: rail.box.z1 + BESIDE }
  const ways = [rail, ...beside].map((timber) =>
    findContact(family, [...above, timber], 'y', -1, {
      thicknesses: [...heights, timber.box.y1 - timber.box.y0],
      within,
    }),
  )
  return jointOf(...ways)
}

/** Along the stretch of a firring that is tall enough. */
const rowOnFirring = (
  family: FamilyId,
  above: readonly Member[],
  firring: Member,
  least: number,
): readonly Joint[] => {
  const band = tallBand(firring, least)
  if (band === undefined) return []
  const [from, to] = band
  const height = Math.min(thicknessAt(firring, from), thicknessAt(firring, to))
  return jointOf(
    findContact(family, [...above, firring], 'y', -1, {
      thicknesses: [...above.map((m) => m.part.size.thickness), height],
      within: { ...EVERYWHERE, z0: from, z1: to },
    }),
  )
}

/** Where along z a firring is at least so tall. */
const tallBand = (firring: Member, least: number): readonly [number, number] | undefined => {
  const { z0, z1 } = firring.box
  const [h0, h1] = [thicknessAt(firring, z0), thicknessAt(firring, z1)]
  if (Math.min(h0, h1) >= least) return [z0, z1]
  if (Math.max(h0, h1) <= least + 1) return undefined
  const z = z0 + ((least - h0) / (h1 - h0)) * (z1 - z0)
  return h0 < h1 ? [z, z1] : [z0, z]
}

/** Height of a firring over one z; 0 where there is none. Its polygon lies in z and y. */
const thicknessAt = (m: Member, z: number): number => heightAt(m.part.solids[0], z)

const heightAt = (solid: Solid | undefined, z: number): number => {
  if (solid?.kind !== 'prism') return 0
  let [lo, hi] = [Infinity, -Infinity]
  solid.polygon.forEach((a, i) => {
    const b = solid.polygon[(i + 1) % solid.polygon.length] ?? a
    if (Math.min(a.u, b.u) > z + 1e-6 || Math.max(a.u, b.u) < z - 1e-6) return
    const ys = a.u === b.u ? [a.v, b.v] : [a.v + ((b.v - a.v) * (z - a.u)) / (b.u - a.u)]
    lo = Math.min(lo, ...ys)
    hi = Math.max(hi, ...ys)
  })
  return hi > lo ? hi - lo : 0
}
