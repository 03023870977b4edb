import { type DrawingItem, type PaperPoint, solidLine } from '../drawing.ts'
import type { Paper } from './paper.ts'

/**
 * The mark that tells which projection a drawing is in (ISO 5456-2): a cut-off cone seen from the side
 * and from its small end. The end view stands right of the cone in first angle, left in third. Centred
 * on `at`; about 16 mm wide and 6 high.
 */
export const projectionSymbol = (
  at: PaperPoint,
  projection: Paper['projection'],
): readonly DrawingItem[] => {
  const [large, small, length] = [2.2, 1.1, 4.8]
  const sense = projection === 'first-angle' ? 1 : -1
  const cone = { x: at.x - sense * 4.4, y: at.y }
  const rings = { x: at.x + sense * 4.4, y: at.y }
  // The small end is at the left in both.
  const [left, right] = [cone.x - length / 2, cone.x + length / 2]
  const edge = (from: PaperPoint, to: PaperPoint) => solidLine('medium', from, to)
  return [
    edge({ x: left, y: at.y - small }, { x: left, y: at.y + small }),
    edge({ x: right, y: at.y - large }, { x: right, y: at.y + large }),
    edge({ x: left, y: at.y - small }, { x: right, y: at.y - large }),
    edge({ x: left, y: at.y + small }, { x: right, y: at.y + large }),
    ring(rings, small),
    ring(rings, large),
    centreLine({ x: left - 0.7, y: at.y }, { x: right + 0.7, y: at.y }),
    centreLine({ x: rings.x - large - 0.7, y: at.y }, { x: rings.x + large + 0.7, y: at.y }),
    centreLine({ x: rings.x, y: at.y - large - 0.7 }, { x: rings.x, y: at.y + large + 0.7 }),
  ]
}

const centreLine = (from: PaperPoint, to: PaperPoint): DrawingItem => ({
  kind: 'line',
  weight: 'thin',
  dash: 'centre',
  from,
  to,
})

const ring = (centre: PaperPoint, radius: number): DrawingItem => ({
  kind: 'polygon',
  points: Array.from({ length: 36 }, (_, i) => ({
    x: centre.x + radius * Math.cos((i * Math.PI) / 18),
    y: centre.y + radius * Math.sin((i * Math.PI) / 18),
  })),
  stroke: { weight: 'medium', dash: 'solid' },
  tint: 'none',
  hatch: 'none',
})
