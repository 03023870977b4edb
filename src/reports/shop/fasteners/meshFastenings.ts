import { POINT_COVER_MM } from '../../../catalog/fastenerRules.ts'
import type { Part } from '../../../hive/part.ts'
import type { Fastening, LooseJoint } from './fastenerReport.ts'
import type { Members } from './members.ts'

/** Usual staples, longest first, and the wire that they are bent from, mm (from memory). */
const LENGTHS = [10, 8, 6, 4]
const WIRE = 1.2
/** Furthest apart, so that no bee squeezes under the edge, mm (common practice, from memory). */
const EVERY = 40
/** From the edge of the mesh, mm. */
const EDGE = 5

/** Staples round the mesh of vents; where the cladding is too thin for any, what to do instead. */
export const meshFastenings = (
  members: Members,
  labelOf: (partId: string) => string,
): { readonly fastenings: readonly Fastening[]; readonly loose: readonly LooseJoint[] } => {
  const fastenings: Fastening[] = []
  const loose: LooseJoint[] = []
  for (const { part } of members.named('openings', 'mesh-')) {
    const board = members.find(part.fixedTo[0] ?? '')?.part
    if (board === undefined) continue
    const joint = 'Vent mesh to cladding'
    const labels = [labelOf(part.id), labelOf(board.id)] as const
    const partIds = [part.id, board.id]
    const whole = part.size.thickness + board.size.thickness
    const length = LENGTHS.find((l) => l <= whole - POINT_COVER_MM)
    if (length === undefined) {
      const message = 'The cladding is too thin for staples: screw a batten over the edge.'
      loose.push({ joint, labels, partIds, glue: false, message })
    } else fastenings.push({ joint, labels, partIds, ...stapled(part, board, length) })
  }
  return { fastenings, loose }
}

const stapled = (
  mesh: Part,
  board: Part,
  lengthMm: number,
): Omit<Fastening, 'joint' | 'labels' | 'partIds'> => {
  const { length, width, thickness } = mesh.size
  const penetrationMm = lengthMm - thickness
  return {
    step: mesh.step,
    fastener: { kind: 'staple', diameterMm: WIRE, lengthMm, finish: 'stainless steel' },
    count: Math.ceil((2 * (length + width - 4 * EDGE)) / EVERY),
    layers: [
      { name: mesh.name, thicknessMm: thickness },
      { name: board.name, thicknessMm: board.size.thickness },
    ],
    penetrationMm,
    coverMm: board.size.thickness - penetrationMm,
    spacingMm: EVERY,
    edgeMm: EDGE,
    endMm: EDGE,
    pilotMm: 0,
    clearanceHoleMm: 0,
    glue: false,
    rule: 'A staple every 40 mm all round; fold the cut wires over first',
    source: 'common practice, from memory',
    warning: undefined,
  }
}
