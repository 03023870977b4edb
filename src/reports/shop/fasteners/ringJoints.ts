import { contactArea, findContact, type Member } from './contact.ts'
import { type FoundJoints, type GlueJoint, type Joint, jointOf } from './joints.ts'
import type { Members } from './members.ts'

const WALLS = ['front-wall', 'back-wall', 'left-wall', 'right-wall'] as const

/** Rest strips on the walls, cover strips on the rest strips, their glued ends, and the hinge rail. */
export const ringJoints = (members: Members): FoundJoints => {
  const joints: Joint[] = []
  const glued: GlueJoint[] = []
  for (const wall of WALLS) {
    const rail = members.find(`${wall}/rail-high`)
    const rest = members.find(`ring/rest-${wall}`)
    const cover = members.find(`ring/cover-${wall}`)
    if (rail && rest) joints.push(...jointOf(findContact('strip', [rest, rail], 'y', -1)))
    if (rail && rest && cover) {
      joints.push(
        ...jointOf(
          findContact('strip', [cover, rest], 'y', -1),
          findContact('strip', [cover, rest, rail], 'y', -1),
        ),
      )
    }
  }
  for (const ring of ['rest', 'cover']) {
    for (const long of ['front-wall', 'back-wall']) {
      for (const end of ['left-wall', 'right-wall']) {
        glued.push(
          ...buttOf(members.find(`ring/${ring}-${long}`), members.find(`ring/${ring}-${end}`)),
        )
      }
    }
  }
  joints.push(...hingeRail(members))
  return { joints, glued }
}

const buttOf = (long: Member | undefined, end: Member | undefined): readonly GlueJoint[] => {
  if (long === undefined || end === undefined) return []
  const contact =
    findContact('strip', [end, long], 'z', 1) ?? findContact('strip', [end, long], 'z', -1)
  return contact ? [{ parts: [long.part, end.part], areaMm2: contactArea(contact) }] : []
}

/** Through the cladding into whatever timber of the wall lies deepest behind it, in one long row. */
const hingeRail = (members: Members): readonly Joint[] => {
  const rail = members.find('rim/hinge-rail')
  if (rail === undefined) return []
  const wall = rail.box.z0 > 0 ? 'front-wall' : 'back-wall'
  const way = rail.box.z0 > 0 ? -1 : 1
  const boards = members.named(wall, 'cladding')
  const timbers = [...members.named(wall, 'rail-high'), ...members.named('ring', `rest-${wall}`)]
  const uprights = members.named(wall, 'stud-')
  const through = (behind: readonly Member[]) =>
    boards.flatMap((board) =>
      behind.flatMap((m) => findContact('hinge-rail', [rail, board, m], 'z', way) ?? []),
    )
  const rows = through(timbers)
  if (rows.length > 0) return jointOf(...rows)
  const posts = through(uprights)
  if (posts.length > 0) return posts.flatMap((c) => jointOf(c))
  return boards.flatMap((board) => jointOf(findContact('hinge-rail', [rail, board], 'z', way)))
}
