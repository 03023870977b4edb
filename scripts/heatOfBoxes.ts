import type { FieldAnswer, SurfaceFaces } from '../src/solvers/conduction/fieldAnswer.ts'
import { INSIDE, OUTSIDE } from './boxWorld.ts'

const SIDES = ['west', 'east', 'south', 'north', 'floor', 'ceiling'] as const

type Side = (typeof SIDES)[number]

/** One side of the cavity, and the outer side opposite it. Heat is from inside to outside. */
export interface FaceHeat {
  readonly innerAreaM2: number
  readonly heatW: number
  /** Air to air, over the inner area; 0 without heat. */
  readonly resistanceM2KPerW: number
  readonly innerLeastC: number
  readonly innerMeanC: number
  readonly outerAreaM2: number
  readonly outerHeatW: number
}

/** What the command prints. */
export interface BoxHeat {
  readonly conductanceWPerK: number
  readonly lowerWPerK: number
  readonly upperWPerK: number
  readonly faces: Readonly<Record<Side, FaceHeat>>
  readonly minInnerSurfaceC: number
  /** Of the scheme that took more. */
  readonly iterations: number
  readonly milliseconds: number
  /** Of both schemes together. */
  readonly unknowns: number
  readonly cells: number
  readonly vertices: number
  readonly mirrorPlanes: number
  readonly relativeResidual: number
  readonly hasConverged: boolean
}

/** The answer of the solver about a world of boxes, for a person or another program. */
export const describeBoxHeat = (
  answer: FieldAnswer,
  { differenceK, milliseconds }: { readonly differenceK: number; readonly milliseconds: number },
): BoxHeat => {
  const { conductanceWPerK, lowerWPerK, upperWPerK, faces } = answer
  if (conductanceWPerK === undefined || lowerWPerK === undefined || upperWPerK === undefined) {
    throw new Error('The boxes have no conductance between inside and outside.')
  }
  const inner = sumBySide(faces, INSIDE)
  const outer = sumBySide(faces, OUTSIDE)
  const describeSide = (side: Side, i: number): readonly [Side, FaceHeat] => {
    // The west side of the cavity looks east; the west side of the outside looks west.
    const within = inner[i ^ 1] ?? NONE
    const without = outer[i] ?? NONE
    return [
      side,
      {
        innerAreaM2: within.areaM2,
        heatW: within.heatW,
        resistanceM2KPerW: within.heatW === 0 ? 0 : (within.areaM2 * differenceK) / within.heatW,
        innerLeastC: within.leastC,
        innerMeanC: within.areaM2 === 0 ? 0 : within.degreeAreas / within.areaM2,
        outerAreaM2: without.areaM2,
        outerHeatW: -without.heatW,
      },
    ]
  }
  return {
    conductanceWPerK,
    lowerWPerK,
    upperWPerK,
    faces: Object.fromEntries(SIDES.map(describeSide)) as BoxHeat['faces'],
    minInnerSurfaceC: inner.reduce((least, { leastC }) => Math.min(least, leastC), Infinity),
    iterations: Math.max(answer.cellIterations, answer.vertexIterations),
    milliseconds,
    unknowns: answer.cellUnknowns + answer.vertexUnknowns,
    cells: answer.cellUnknowns,
    vertices: answer.vertexUnknowns,
    mirrorPlanes: answer.mirrorPlanes,
    relativeResidual: answer.relativeResidual,
    hasConverged: answer.hasConverged,
  }
}

interface SideSum {
  readonly areaM2: number
  readonly heatW: number
  readonly leastC: number
  /** Area times its mean temperature. */
  readonly degreeAreas: number
}

const NONE: SideSum = { areaM2: 0, heatW: 0, leastC: Infinity, degreeAreas: 0 }

/** The world's axes are the file's x, z and y: directions in the order of `SIDES`. */
const SIDE_OF_DIRECTION = [0, 1, 4, 5, 2, 3] as const

const sumBySide = (faces: SurfaceFaces, environment: number): readonly SideSum[] => {
  const sums: SideSum[] = SIDES.map(() => NONE)
  for (let i = 0; i < faces.count; i += 1) {
    if (faces.environment[i] !== environment) continue
    const side = SIDE_OF_DIRECTION[faces.direction[i] ?? 0] ?? 0
    const { areaM2, heatW, leastC, degreeAreas } = sums[side] ?? NONE
    const area = faces.areaM2[i] ?? 0
    sums[side] = {
      areaM2: areaM2 + area,
      heatW: heatW + (faces.heatW[i] ?? 0),
      leastC: Math.min(leastC, faces.leastC[i] ?? Infinity),
      degreeAreas: degreeAreas + area * (faces.meanC[i] ?? 0),
    }
  }
  return sums
}
