import { fastenerDistances } from '../../../catalog/fastenerRules.ts'
import type { Box } from '../../../geometry/box.ts'
import { TOUCH_TOLERANCE } from '../../../geometry/tolerance.ts'
import type { Axis } from '../../../geometry/vector.ts'
import { type Contact, findContact, type Member } from './contact.ts'
import { type FoundJoints, type Joint, jointOf } from './joints.ts'
import { hasRoom } from './layRow.ts'
import type { Members } from './members.ts'
import { PANEL_FACES } from './panelJoints.ts'

/** Boards on the walls: each on one line over all uprights behind it, or along a rail if none reach. */
export const claddingJoints = (members: Members): FoundJoints => {
  const joints: Joint[] = []
  const walls = PANEL_FACES.slice(0, 4)
  const timbers = walls.flatMap(({ id }) => members.named(id, 'rail-', 'stud-', 'block-'))
  const all = [...timbers, ...members.in('ring')]
  for (const { id, through, out } of walls) {
    const way = out === 1 ? -1 : 1
    const boards = members.named(id, 'cladding')
    const first = boards[0]
    if (first === undefined) continue
    // What looks at the back of the boards with a side, not with its end grain.
    const behind = all.filter(
      (m) => m.part.grain !== through && isBehind(first.box, m.box, through, out),
    )
    if (first.part.id !== `${id}/cladding`) {
      for (const board of boards) {
        const own = behind.filter((m) => m.box.y0 < board.box.y1 && board.box.y0 < m.box.y1)
        joints.push(...boardJoints(board, own, through, way))
      }
      continue
    }
    // A sheet also reaches over the rings above its own frame and over its neighbours' corners.
    for (const m of behind) {
      if (m.part.id.startsWith(`${id}/`)) continue
      const contact = findContact('sheet', [first, m], through, way)
      if (contact) joints.push({ ways: [contact], isExtra: true })
    }
  }
  return { joints, glued: [] }
}

const isBehind = (board: Box, other: Box, through: Axis, out: 1 | -1): boolean => {
  const [lo, hi] = through === 'x' ? (['x0', 'x1'] as const) : (['z0', 'z1'] as const)
  return Math.abs(out === 1 ? board[lo] - other[hi] : other[lo] - board[hi]) <= TOUCH_TOLERANCE
}

/** The thinnest screw that boards are held with decides where the line may run, mm. */
const LINE = fastenerDistances(3.5, { predrilled: true })

const boardJoints = (
  board: Member,
  behind: readonly Member[],
  through: Axis,
  way: 1 | -1,
): readonly Joint[] => {
  const uprights = behind.filter((m) => m.part.grain === 'y')
  // 1. The band of heights that keeps the end distance of every upright and the board's own edges.
  const tall = uprights.filter(
    (m) => Math.min(m.box.y1, board.box.y1) - Math.max(m.box.y0, board.box.y0) > LINE.endMm,
  )
  let [from, to] = [board.box.y0 + LINE.edgeMm, board.box.y1 - LINE.edgeMm]
  for (const { box } of tall) {
    from = Math.max(from, box.y0 + LINE.endMm)
    to = Math.min(to, box.y1 - LINE.endMm)
  }
  const at = (m: Member, within?: Box): Contact | undefined =>
    findContact('board', [board, m], through, way, within ? { within } : {})
  if (tall.length >= 2 && to > from) {
    const middle = (from + to) / 2
    const within: Box = { ...EVERYWHERE, y0: middle - BAND, y1: middle + BAND }
    const onLine = tall.flatMap((m) => jointOf(at(m, within)))
    if (onLine.length >= 2) return onLine
  }
  // 2. Each upright by itself.
  const own = uprights.map((m) => at(m)).filter((c) => c !== undefined && hasRoom(c, 3.5, true))
  if (own.length >= 2) return own.flatMap((c) => jointOf(c))
  // 3. Along the rail or ring strip behind it that has most room.
  const rails = behind
    .filter((m) => m.part.grain !== 'y')
    .flatMap((m) => {
      const contact = findContact('rim', [board, m], through, way)
      return contact ? [contact] : []
    })
    .sort(
      (a, b) =>
        Number(hasRoom(b, 3.5, true)) - Number(hasRoom(a, 3.5, true)) || depth(b) - depth(a),
    )
  return jointOf(rails[0] ?? uprights.map((m) => at(m)).find((c) => c !== undefined))
}

const depth = ({ across }: Contact): number => across.to - across.from

const EVERYWHERE: Box = { x0: -1e6, x1: 1e6, y0: -1e6, y1: 1e6, z0: -1e6, z1: 1e6 }
/** Half the band that a line of screws lies in, mm. */
const BAND = 5
