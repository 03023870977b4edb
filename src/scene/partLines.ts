import type { Material, Mesh } from 'three'
import type { Part } from '../hive/part.ts'
import { createLineBatch, type LineRows } from './lineBatch.ts'
import { type Marks, UNMARKED } from './marks.ts'
import { AMBER } from './palette.ts'
import { partEdges } from './partEdges.ts'
import { hexBytes, INK_COLOUR, lookOfPart } from './partLook.ts'
import type { PosedPart } from './posedPart.ts'

/** The ink edges of all parts, and the dashed hidden edges of those selected. */
export interface PartLines {
  readonly meshes: readonly Mesh[]
  readonly setParts: (posed: readonly PosedPart[]) => void
  readonly writePlaces: (posed: readonly PosedPart[]) => void
  readonly writeStyles: (posed: readonly PosedPart[], marked: Marks) => void
  readonly dispose: () => void
}

const SELECTED_WEIGHT = 2.6
const HIDDEN_WEIGHT = 1.3
/** New in a step of assembly; what stood there before is drawn in thinner ink. */
const FRESH_WEIGHT = 2.2
const STANDING_ALPHA = 0.5
const AMBER_BYTES = hexBytes(AMBER)
/** Amber darkened towards ink: the outline of a selected part must read on pale wood. */
const SELECTED_INK = AMBER_BYTES.map((v) => Math.round(v * 0.72)) as [number, number, number]
/** Darker still: it must read on amber. */
const FRESH_INK = AMBER_BYTES.map((v) => Math.round(v * 0.42)) as [number, number, number]

export const createPartLines = (ink: Material, hiddenInk: Material): PartLines => {
  const edges = createLineBatch(ink, 3)
  const hidden = createLineBatch(hiddenInk, 4)
  let closed: readonly (readonly number[])[] = []
  let total = 0
  const writeHidden = (posed: readonly PosedPart[], marked: Marks): void => {
    const chosen = posed.flatMap((one, i) =>
      marked.selected.has(one.part.id) && !one.pose.hidden
        ? [{ one, segments: closed[i] ?? [] }]
        : [],
    )
    const rows = hidden.reserve(chosen.reduce((n, c) => n + c.segments.length / 6, 0))
    let at = 0
    for (const { one, segments } of chosen) {
      placeSegments(rows, at, { one, segments })
      styleSegments(rows, at, {
        count: segments.length / 6,
        weight: HIDDEN_WEIGHT,
        ink: SELECTED_INK,
        alpha: 0.75,
      })
      at += segments.length / 6
    }
    hidden.send('all')
  }
  let marks: Marks = UNMARKED
  return {
    meshes: [edges.mesh, hidden.mesh],
    setParts: (posed) => {
      closed = posed.map(({ part }) => partEdges(part))
      total = closed.reduce((n, s) => n + s.length / 6, 0)
      edges.reserve(total)
    },
    writePlaces: (posed) => {
      const rows = edges.reserve(total)
      let at = 0
      posed.forEach((one, i) => {
        const segments = closed[i] ?? []
        placeSegments(rows, at, { one, segments })
        at += segments.length / 6
      })
      edges.send('places')
      if (marks.selected.size > 0) writeHidden(posed, marks)
    },
    writeStyles: (posed, marked) => {
      marks = marked
      const rows = edges.reserve(total)
      let at = 0
      posed.forEach((one, i) => {
        const count = (closed[i] ?? []).length / 6
        styleSegments(rows, at, { count, ...edgeStyle(one.part, one.pose.hidden, marked) })
        at += count
      })
      edges.send('styles')
      writeHidden(posed, marked)
    },
    dispose: () => {
      edges.dispose()
      hidden.dispose()
    },
  }
}

interface EdgeStyle {
  readonly weight: number
  readonly ink: readonly [number, number, number]
  readonly alpha: number
}

const edgeStyle = (part: Part, isHidden: boolean, marks: Marks): EdgeStyle => {
  const { selected, hovered, fresh } = marks
  if (isHidden) return { weight: 0, ink: INK_COLOUR, alpha: 0 }
  if (selected.has(part.id)) return { weight: SELECTED_WEIGHT, ink: SELECTED_INK, alpha: 1 }
  const { weight, alpha } = lookOfPart(part).edge
  if (fresh?.has(part.id) === true) return { weight: FRESH_WEIGHT, ink: FRESH_INK, alpha: 1 }
  if (part.id === hovered) return { weight: weight + 0.8, ink: INK_COLOUR, alpha: 1 }
  if (fresh !== undefined) return { weight, ink: INK_COLOUR, alpha: alpha * STANDING_ALPHA }
  return { weight, ink: INK_COLOUR, alpha }
}

const styleSegments = (
  rows: LineRows,
  from: number,
  style: EdgeStyle & { readonly count: number },
): void => {
  const [r, g, b] = style.ink
  rows.weight.fill(style.weight, from, from + style.count)
  for (let i = 4 * from; i < 4 * (from + style.count); i += 4) {
    rows.ink[i] = r
    rows.ink[i + 1] = g
    rows.ink[i + 2] = b
    rows.ink[i + 3] = Math.round(255 * style.alpha)
  }
}

/** Turns and moves the segments of one part; plain numbers, because it runs on every slider step. */
const placeSegments = (
  rows: LineRows,
  from: number,
  { one, segments }: { readonly one: PosedPart; readonly segments: readonly number[] },
): void => {
  const { translation: t, turn } = one.pose
  const [c, s] = turn === undefined ? [1, 0] : [Math.cos(turn.angleRad), Math.sin(turn.angleRad)]
  const [py, pz] = [turn?.pivot.y ?? 0, turn?.pivot.z ?? 0]
  for (let i = 0; i < segments.length; i += 3) {
    const to = i % 6 === 0 ? rows.start : rows.end
    const o = 3 * (from + Math.floor(i / 6))
    const y = (segments[i + 1] ?? 0) - py
    const z = (segments[i + 2] ?? 0) - pz
    to[o] = (segments[i] ?? 0) + t.x
    to[o + 1] = py + c * y - s * z + t.y
    to[o + 2] = pz + s * y + c * z + t.z
  }
}
