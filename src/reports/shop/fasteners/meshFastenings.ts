import type { Fastening } from './fastenerReport.ts'
import type { Members } from './members.ts'

const STAPLE = { kind: 'staple', diameterMm: 1.2, lengthMm: 10, finish: 'stainless steel' } as const
/** Furthest apart, so that no bee squeezes under the edge, mm (common practice, from memory). */
const EVERY = 40
/** From the edge of the mesh, mm. */
const EDGE = 5

/** Staples round the mesh of vents. */
export const meshFastenings = (
  members: Members,
  labelOf: (partId: string) => string,
): readonly Fastening[] =>
  members.named('openings', 'mesh-').flatMap(({ part }) => {
    const board = members.find(part.fixedTo[0] ?? '')?.part
    if (board === undefined) return []
    const { length, width, thickness } = part.size
    const count = Math.ceil((2 * (length + width - 4 * EDGE)) / EVERY)
    const penetration = STAPLE.lengthMm - thickness
    return [
      {
        joint: 'Vent mesh to cladding',
        step: part.step,
        labels: [labelOf(part.id), labelOf(board.id)] as const,
        partIds: [part.id, board.id],
        fastener: STAPLE,
        count,
        layers: [
          { name: part.name, thicknessMm: thickness },
          { name: board.name, thicknessMm: board.size.thickness },
        ],
        penetrationMm: penetration,
        coverMm: board.size.thickness - penetration,
        spacingMm: EVERY,
        edgeMm: EDGE,
        endMm: EDGE,
        pilotMm: 0,
        clearanceHoleMm: 0,
        glue: false,
        rule: 'A staple every 40 mm all round; fold the cut wires over first',
        source: 'common practice, from memory',
        warning:
          board.size.thickness - penetration < 3
            ? 'The cladding is thin: use 6 mm staples, or a batten screwed over the edge.'
            : undefined,
      },
    ]
  })
