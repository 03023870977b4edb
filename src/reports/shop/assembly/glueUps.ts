import { boundingBox } from '../../../geometry/box.ts'
import { solidBounds } from '../../../geometry/solid.ts'
import type { Part } from '../../../hive/part.ts'
import type { AssemblyStep } from './assemblyReport.ts'
import type { GlueUp, StageFacts } from './stage.ts'

/** Least difference that two readings of a tape can show, mm. Common practice. */
const TAPE_MM = 1
/** How far a side may lean for its length. Common practice in joinery: 1 mm in a metre. */
const LEAN = 0.001

export const SQUARE_RULE =
  'A side may lean by one thousandth of its length (common practice in joinery). A rectangle of sides a and b that leans so much has diagonals that differ by 2ab / 1000 d, where d is the diagonal. Less than 1 mm cannot be read off a tape, so no limit is smaller.'

/**
 * What both diagonals of a rectangle must measure, and how far they may differ, mm: sheared by a
 * small angle e, their squares are a² + b² ± 2ab sin e, so they differ by nearly 2ab e / d.
 */
export const measureDiagonal = ({
  name,
  sidesMm: [a, b],
}: GlueUp): AssemblyStep['diagonals'][number] => {
  const lengthMm = Math.hypot(a, b)
  return { name, lengthMm, limitMm: Math.max(TAPE_MM, (2 * a * b * LEAN) / lengthMm) }
}

/** The two longest sides of the box around parts, the longer first. */
const sidesAround = (parts: readonly Part[]): readonly [number, number] | undefined => {
  if (parts.length === 0) return undefined
  const b = boundingBox(parts.flatMap((p) => p.solids.map(solidBounds)))
  const [long = 0, short = 0] = [b.x1 - b.x0, b.y1 - b.y0, b.z1 - b.z0].sort((p, q) => q - p)
  return [long, short]
}

const around = (name: string, parts: readonly Part[]): readonly GlueUp[] => {
  const sidesMm = sidesAround(parts)
  return sidesMm === undefined ? [] : [{ name, sidesMm }]
}

const piecesOf = ({ parts }: StageFacts, ...beginnings: readonly string[]): readonly Part[] =>
  parts.filter((p) => beginnings.some((beginning) => p.id.startsWith(beginning)))

export const longWallGlueUps = (facts: StageFacts): readonly GlueUp[] =>
  around('Long wall', piecesOf(facts, 'front-wall/rail-', 'front-wall/stud-'))

export const endWallGlueUps = (facts: StageFacts): readonly GlueUp[] =>
  around('End wall', piecesOf(facts, 'left-wall/rail-', 'left-wall/stud-'))

/** Inside, where nothing stands in the way of the tape. */
export const boxGlueUp = ({ hive: { dimensions: d } }: StageFacts): readonly GlueUp[] => {
  const [long, short] = [d.cavityLength, d.cavityWidth].sort((a, b) => b - a)
  return [{ name: 'Box, inside', sidesMm: [long ?? 0, short ?? 0] }]
}

export const floorGlueUp = (facts: StageFacts): readonly GlueUp[] =>
  around('Floor frame', piecesOf(facts, 'floor/rail-', 'floor/stud-'))

export const lidGlueUp = (facts: StageFacts): readonly GlueUp[] =>
  around('Lid frame', piecesOf(facts, 'lid/rail-', 'lid/stud-'))

export const rimGlueUp = (facts: StageFacts): readonly GlueUp[] =>
  around('Lid over its rim', piecesOf(facts, 'lid/rim-'))

/** Over the outer faces of the side bars, from the bottom bar to the shoulders of the top bar. */
export const frameGlueUps = (facts: StageFacts): readonly GlueUp[] => {
  const { frame } = facts.design
  const halves =
    frame.form === 'split'
      ? [
          { name: 'Frame, upper half', id: 'frame-1/upper-' },
          { name: 'Frame, lower half', id: 'frame-1/lower-' },
        ]
      : [{ name: 'Frame', id: 'frame-1/' }]
  return halves.flatMap(({ name, id }) => {
    const bars = piecesOf(facts, `${id}side-bar-`)
    const sides = sidesAround(bars)
    return sides === undefined ? [] : [{ name, sidesMm: sides }]
  })
}
