import type { Material, Mesh } from 'three'
import type { Vec3 } from '../geometry/vector.ts'
import type { DimensionLine } from './dimensionLines.ts'
import { createLineBatch } from './lineBatch.ts'
import { INK_COLOUR } from './partLook.ts'
import { minus, plus, scaled, unit } from './vectors.ts'

export interface DimensionMesh {
  readonly mesh: Mesh
  readonly write: (lines: readonly DimensionLine[]) => void
  readonly dispose: () => void
}

/** Half the length of the slanting ticks, mm. */
const TICK = 11
const LINE_WEIGHT = 1.1
const TICK_WEIGHT = 2
const EXTENSION_WEIGHT = 0.7

export const createDimensionMesh = (ink: Material): DimensionMesh => {
  const batch = createLineBatch(ink, 3)
  return {
    mesh: batch.mesh,
    write: (lines) => {
      const strokes = lines.flatMap(strokesOf)
      const rows = batch.reserve(strokes.length)
      strokes.forEach(({ from, to, weight }, i) => {
        rows.start.set([from.x, from.y, from.z], 3 * i)
        rows.end.set([to.x, to.y, to.z], 3 * i)
        rows.weight[i] = weight
        rows.ink.set([...INK_COLOUR, 235], 4 * i)
      })
      batch.send('all')
    },
    dispose: batch.dispose,
  }
}

interface Stroke {
  readonly from: Vec3
  readonly to: Vec3
  readonly weight: number
}

const strokesOf = (line: DimensionLine): readonly Stroke[] => {
  const slant = scaled(unit(plus(unit(minus(line.to, line.from)), line.outward)), TICK)
  return [
    { from: line.from, to: line.to, weight: LINE_WEIGHT },
    ...[line.from, line.to].map((end) => ({
      from: minus(end, slant),
      to: plus(end, slant),
      weight: TICK_WEIGHT,
    })),
    ...line.extensions.map(([from, to]) => ({ from, to, weight: EXTENSION_WEIGHT })),
  ]
}
