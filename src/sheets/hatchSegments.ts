import type { HatchKind, PaperPoint } from './drawing.ts'

export interface Segment {
  readonly from: PaperPoint
  readonly to: PaperPoint
}

/** Families of parallel lines: direction in degrees (anticlockwise from the right) and pitch, paper mm. */
const FAMILIES: Readonly<Record<HatchKind, readonly { angleDeg: number; pitchMm: number }[]>> = {
  none: [],
  wood: [{ angleDeg: 45, pitchMm: 1.6 }],
  'wood-reverse': [{ angleDeg: 135, pitchMm: 1.6 }],
  ply: [{ angleDeg: 0, pitchMm: 1.1 }],
  'ply-upright': [{ angleDeg: 90, pitchMm: 1.1 }],
  foam: [
    { angleDeg: 60, pitchMm: 3.4 },
    { angleDeg: 120, pitchMm: 3.4 },
  ],
  metal: [{ angleDeg: 45, pitchMm: 0.5 }],
}

/**
 * The thin lines that fill a polygon, clipped to it exactly. They belong to a grid fixed to the paper,
 * so touching pieces of one part hatch as one. Any simple polygon; fewer than 3 points give none.
 */
export const hatchSegments = (points: readonly PaperPoint[], hatch: HatchKind): Segment[] =>
  points.length < 3
    ? []
    : FAMILIES[hatch].flatMap(({ angleDeg, pitchMm }) => parallels(points, angleDeg, pitchMm))

const parallels = (points: readonly PaperPoint[], angleDeg: number, pitch: number): Segment[] => {
  const angle = (angleDeg * Math.PI) / 180
  // y runs down the paper, so a line that climbs has a negative step in y.
  const [dx, dy] = [Math.cos(angle), -Math.sin(angle)]
  const across = (p: PaperPoint) => -p.x * dy + p.y * dx
  const alongLine = (p: PaperPoint) => p.x * dx + p.y * dy
  const offsets = points.map(across)
  const first = Math.ceil((Math.min(...offsets) + 1e-6) / pitch)
  const last = Math.floor((Math.max(...offsets) - 1e-6) / pitch)
  const segments: Segment[] = []
  for (let k = first; k <= last; k += 1) {
    const hits = crossings(points, k * pitch, across, alongLine)
    // Inside is between the first and second hit, the third and fourth, and so on.
    for (let i = 0; i + 1 < hits.length; i += 2) {
      const [s, t] = [hits[i] ?? 0, hits[i + 1] ?? 0]
      const at = (l: number): PaperPoint => ({
        x: l * dx - k * pitch * dy,
        y: l * dy + k * pitch * dx,
      })
      if (t - s > 1e-6) segments.push({ from: at(s), to: at(t) })
    }
  }
  return segments
}

const crossings = (
  points: readonly PaperPoint[],
  offset: number,
  across: (p: PaperPoint) => number,
  alongLine: (p: PaperPoint) => number,
): readonly number[] =>
  points
    .flatMap((p, i) => {
      const q = points[(i + 1) % points.length] ?? p
      const [a, b] = [across(p), across(q)]
      // Half-open, so that a corner on the line counts once.
      if (a <= offset === b <= offset) return []
      const t = (offset - a) / (b - a)
      return [alongLine(p) + t * (alongLine(q) - alongLine(p))]
    })
    .sort((s, t) => s - t)
