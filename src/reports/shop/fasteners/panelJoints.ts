import type { Box } from '../../../geometry/box.ts'
import type { Axis } from '../../../geometry/vector.ts'
import type { Hive } from '../../../hive/hive.ts'
import { contactArea, findContact, type Member } from './contact.ts'
import { type FoundJoints, type GlueJoint, type Joint, jointOf } from './joints.ts'
import type { Members } from './members.ts'

/** How the layers of one panel lie: the axis through them and which way is out. */
interface PanelFace {
  readonly id: string
  readonly through: Axis
  readonly out: 1 | -1
  /** The direction from rail to rail, which the studs run along. */
  readonly studs: Axis
}

export const PANEL_FACES: readonly PanelFace[] = [
  { id: 'front-wall', through: 'z', out: 1, studs: 'y' },
  { id: 'back-wall', through: 'z', out: -1, studs: 'y' },
  { id: 'left-wall', through: 'x', out: -1, studs: 'y' },
  { id: 'right-wall', through: 'x', out: 1, studs: 'y' },
  { id: 'floor', through: 'y', out: -1, studs: 'z' },
  { id: 'lid', through: 'y', out: 1, studs: 'z' },
]

/** Lining, frame and sheet cladding of all six panels, and the corners where walls meet. */
export const panelJoints = (hive: Hive, members: Members): FoundJoints => {
  const joints: Joint[] = []
  const glued: GlueJoint[] = []
  for (const face of PANEL_FACES) {
    const timbers = members.named(face.id, 'rail-', 'stud-', 'block-')
    const holes = hive.openings
      .filter(({ wall }) => `${wall}-wall` === face.id)
      .map(({ tunnel }) => tunnel)
    const lining = members.find(`${face.id}/lining`)
    const skin = members.find(`${face.id}/cladding`)
    for (const timber of timbers) {
      // Blocks round openings are held by glue; most are too narrow for screws besides.
      const isExtra = isKind(timber, 'block-')
      for (const [sheet, side] of [
        [lining, 1],
        [skin, -1],
      ] as const) {
        const contact = sheet && sheetOn(sheet, timber, face, holes, side)
        if (contact) joints.push({ ways: [contact], isExtra })
      }
    }
    joints.push(...studEnds(timbers, face))
    glued.push(...gluedBlocks(timbers, face))
  }
  joints.push(...corners(members))
  return { joints, glued }
}

const sheetOn = (
  sheet: Member,
  timber: Member,
  { through, out }: PanelFace,
  holes: readonly Box[],
  from: 1 | -1,
) =>
  findContact('sheet', [sheet, timber], through, from === 1 ? out : out === 1 ? -1 : 1, { holes })

const isKind = (m: Member, kind: string): boolean =>
  m.part.id.startsWith(kind, m.part.id.indexOf('/') + 1)

/** Rails over the ends of the studs. */
const studEnds = (timbers: readonly Member[], { studs }: PanelFace): readonly Joint[] => {
  const rails = timbers.filter((m) => isKind(m, 'rail-'))
  return timbers
    .filter((m) => isKind(m, 'stud-'))
    .flatMap((stud) =>
      rails.flatMap((rail) => {
        const way = rail.part.id.endsWith('rail-low') ? 1 : -1
        return jointOf(findContact('butt', [rail, stud], studs, way))
      }),
    )
}

/** Blocks round openings lie on the rails and end at the studs: they carry nothing but the tunnel. */
const gluedBlocks = (timbers: readonly Member[], { studs }: PanelFace): readonly GlueJoint[] =>
  timbers
    .filter((m) => isKind(m, 'block-'))
    .map((block) => {
      const others = timbers.filter((m) => m !== block && !isKind(m, 'block-'))
      const touching = others.flatMap((m) => {
        const contact =
          findContact('sheet', [block, m], studs, 1) ?? findContact('sheet', [block, m], studs, -1)
        return contact ? [{ m, area: contactArea(contact) }] : []
      })
      const { length, width } = block.part.size
      return {
        parts: [block.part, ...touching.map(({ m }) => m.part)],
        // Both broad sides, to lining and cladding, besides the timbers that it meets.
        areaMm2: 2 * length * Math.min(width, 40) + touching.reduce((s, t) => s + t.area, 0),
      }
    })

/** The end stud of a wall that stands between others, through their lining into their end stud. */
const corners = (members: Members): readonly Joint[] => {
  const walls = PANEL_FACES.slice(0, 4)
  return walls.flatMap((through) => {
    const lining = members.find(`${through.id}/lining`)
    if (lining === undefined) return []
    const posts = members.named(through.id, 'stud-')
    return walls
      .filter((other) => other.through !== through.through)
      .flatMap((other) =>
        members
          .named(other.id, 'stud-')
          .flatMap((stud) =>
            posts.flatMap((post) =>
              jointOf(findContact('corner', [stud, lining, post], through.through, through.out)),
            ),
          ),
      )
  })
}
