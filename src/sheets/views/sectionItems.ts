import { type DrawingItem, type LineWeight, solidLine } from '../drawing.ts'
import { toPaper, type View } from '../view.ts'
import type { CutPart } from './cutParts.ts'
import { hatchOf } from './hatchOf.ts'
import type { Bounds2 } from './polygon2.ts'

/** Cut parts on the paper: ground and hatch by material, then the edges of each part. */
export const sectionItems = (cuts: readonly CutPart[], view: View): readonly DrawingItem[] => {
  const turned = turnNeighbours(cuts)
  const fills = cuts.flatMap((cut) =>
    cut.faces.map((face): DrawingItem => {
      const look = hatchOf(cut.part.material, cut.bounds, {
        isTurned: turned.has(cut.part.id),
        isNarrow: narrowest(cut.bounds) * view.scale < 2,
      })
      const points = face.map((p) => toPaper(view, p))
      return { kind: 'polygon', points, stroke: undefined, ...look, tag: cut.part.id }
    }),
  )
  const lines = cuts.flatMap((cut) => {
    const weight = weightFor(cut.bounds, view.scale)
    return cut.edges.map((e) =>
      solidLine(e.isBreak ? 'thin' : weight, toPaper(view, e.a), toPaper(view, e.b), cut.part.id),
    )
  })
  return [...fills, ...lines]
}

const narrowest = (b: Bounds2): number => Math.min(b.u1 - b.u0, b.v1 - b.v0)

/** Cut edges are thick, but never so thick that a thin sheet becomes one blot. */
const weightFor = (bounds: Bounds2, scale: number): LineWeight => {
  const least = narrowest(bounds) * scale
  return least >= 4 ? 'thick' : least >= 1 ? 'medium' : 'thin'
}

const touch = (a: Bounds2, b: Bounds2): boolean =>
  a.u0 <= b.u1 + 0.5 && b.u0 <= a.u1 + 0.5 && a.v0 <= b.v1 + 0.5 && b.v0 <= a.v1 + 0.5

/** Parts whose diagonals run the other way, so that neighbours of one material stand apart. */
const turnNeighbours = (cuts: readonly CutPart[]): ReadonlySet<string> => {
  const turned = new Set<string>()
  cuts.forEach((cut, i) => {
    const neighbours = cuts
      .slice(0, i)
      .filter((c) => c.part.material === cut.part.material && touch(c.bounds, cut.bounds))
    const turnedOnes = neighbours.filter((c) => turned.has(c.part.id)).length
    if (neighbours.length - turnedOnes > turnedOnes) turned.add(cut.part.id)
  })
  return turned
}
