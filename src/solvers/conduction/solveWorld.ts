import { assembleCells, widths } from './cellScheme.ts'
import { checkWorld } from './checkWorld.ts'
import { type Spacing, vertexSpacing } from './coarsen.ts'
import { type AirFaces, collectFaces } from './collectFaces.ts'
import {
  heatOfCells,
  lowerConductance,
  twoTemperatures,
  upperConductance,
} from './conductanceBounds.ts'
import {
  jacobi,
  residualOf,
  type Solved,
  type SolveProgress,
  solveByConjugateGradients,
} from './conjugateGradients.ts'
import type { FieldAnswer, SchemeAnswer } from './fieldAnswer.ts'
import type { FieldGrid } from './fieldGrid.ts'
import { joinSchemes } from './joinSchemes.ts'
import { facePlanes, layPlanes } from './layPlanes.ts'
import { type MirroredWorld, mirrorWorld } from './mirror.ts'
import { applyMultigrid, buildMultigrid } from './multigrid.ts'
import type { Operator } from './operator.ts'
import { type Grid, paintGrid } from './paintGrid.ts'
import { coldestOf, warmAnswer, warmGrid, warmWorld } from './relativeToColdest.ts'
import { middles, startFrom } from './startField.ts'
import { unfold } from './unfold.ts'
import { fillVertices, readFaces } from './vertexField.ts'
import { assembleVertices } from './vertexScheme.ts'
import type { MeshSpec, World } from './world.ts'
import { WorldError } from './worldError.ts'

/** A world, how finely to look at it, and when to stop. */
export interface FieldQuestion {
  readonly world: World
  readonly mesh: MeshSpec
  /** Relative residual to reach: 1e-3 for a preview, 1e-4 to show temperatures, 1e-8 for tests. */
  readonly tolerance: number
  /** A field of the same or a similar world, to start from. */
  readonly start?: FieldGrid | undefined
  /** The plain one is there to be compared with. */
  readonly preconditioner?: 'multigrid' | 'jacobi'
  /** Whether planes of symmetry may be used to solve less; true if left out. The answer is the same. */
  readonly useMirrors?: boolean
}

/** Steps of a solver that can be left off after each; undefined while the equations are being set up. */
export type SolveSteps = Generator<SolveProgress | undefined, SchemeAnswer>

/**
 * Solves both schemes one after the other. Throws `WorldError` for a world that has no answer: no
 * matter that any environment touches, a conductivity that is not above 0, more cells than memory
 * holds. A body that no environment touches beside others that one does stays at 0.
 */
export const solveWorld = (question: FieldQuestion): FieldAnswer =>
  joinSchemes(finish(solveCells(question)), finish(solveVertices(question)))

const finish = (steps: SolveSteps): SchemeAnswer => {
  for (;;) {
    const { done, value } = steps.next()
    if (done) return value
  }
}

/** The cell scheme, step by step: heat flows, and the lower bound of the conductance. */
export const solveCells = (question: FieldQuestion): SolveSteps => fromColdest(question, cellSteps)

/** The vertex scheme, step by step: surface temperatures, and the upper bound of the conductance. */
export const solveVertices = (question: FieldQuestion): SolveSteps =>
  fromColdest(question, vertexSteps)

/** Solves with the coldest air at 0, where the residual means most, and puts the answer back. */
function* fromColdest(
  question: FieldQuestion,
  steps: (question: FieldQuestion) => SolveSteps,
): SolveSteps {
  checkWorld(question.world, question.mesh)
  const { world, start } = question
  const zero = coldestOf(world)
  if (zero === 0 || world.environments.length === 0) return yield* steps(question)
  const shifted = { world: warmWorld(world, -zero), start: start && warmGrid(start, -zero) }
  return warmAnswer(yield* steps({ ...question, ...shifted }), zero)
}

function* cellSteps(question: FieldQuestion): SolveSteps {
  const { world } = question
  const { grid, faces, mirrored } = yield* prepare(question)
  const { operator, source } = yield* assembleCells(grid, faces)
  yield
  const [xs, ys, zs] = grid.planes
  const places: Spacing = [middles(xs), middles(ys), middles(zs)]
  const u = begin(question, operator, places)
  const solved = yield* solve(question, operator, source, u, [widths(xs), widths(ys), widths(zs)])
  yield
  const heatW = heatOfCells(grid, faces, operator.layout, u)
  const two = twoTemperatures(world)
  const lost = new Float64Array(operator.layout.length)
  residualOf(operator, source, u, lost)
  yield
  const lower = two && lowerConductance(grid, faces, operator, u, heatW, lost, two)
  const part: SchemeAnswer = {
    scheme: 'cell',
    boundWPerK: lower?.boundWPerK,
    estimateWPerK: lower?.estimateWPerK,
    unknowns: operator.layout.count,
    ...solved,
    faces: { ...shapeOf(faces), heatW },
    grid: undefined,
    mirrorPlanes: 0,
  }
  return unfold(part, mirrored)
}

function* vertexSteps(question: FieldQuestion): SolveSteps {
  const { world } = question
  const { grid, faces, mirrored } = yield* prepare(question)
  const equations = yield* assembleVertices(grid, faces)
  const { operator, source, corners, hasConflict } = equations
  yield
  const u = begin(question, operator, grid.planes)
  const solved = yield* solve(question, operator, source, u, vertexSpacing(grid.planes))
  yield
  const vertexC = fillVertices(grid, world, equations, u)
  yield
  const two = twoTemperatures(world)
  const [xM, yM, zM] = grid.planes
  // Held at two temperatures at once, a vertex would need heat without end.
  const upper =
    two &&
    (hasConflict ? Number.POSITIVE_INFINITY : upperConductance(grid, faces, corners, vertexC, two))
  yield
  const part: SchemeAnswer = {
    scheme: 'vertex',
    boundWPerK: upper,
    estimateWPerK: upper,
    unknowns: operator.layout.count,
    ...solved,
    faces: { ...shapeOf(faces), ...readFaces(faces, equations, vertexC) },
    grid: { xM, yM, zM, temperatureC: Float32Array.from(vertexC) },
    mirrorPlanes: 0,
  }
  return unfold(part, mirrored)
}

interface Prepared {
  readonly grid: Grid
  readonly faces: AirFaces
  readonly mirrored: MirroredWorld
}

function* prepare({
  world,
  mesh,
  useMirrors = true,
}: FieldQuestion): Generator<undefined, Prepared> {
  const mirrored = mirrorWorld(world, mesh.mergeM, useMirrors)
  const { part, mirrors } = mirrored
  const endsInMirror = [0, 1, 2].map((axis) => mirrors.some((m) => m.axis === axis))
  yield
  const grid = paintGrid(part, layPlanes(facePlanes(part, mesh.mergeM), mesh, endsInMirror))
  yield
  const faces = collectFaces(grid, part)
  if (faces.count === 0) {
    throw new WorldError(
      'No matter touches any air, so no heat can flow. Give the world blocks of matter and an environment beside them.',
    )
  }
  yield
  return { grid, faces, mirrored }
}

const begin = ({ start }: FieldQuestion, { layout }: Operator, places: Spacing): Float64Array =>
  start === undefined ? new Float64Array(layout.length) : startFrom(start, layout, places)

function* solve(
  { tolerance, preconditioner = 'multigrid' }: FieldQuestion,
  operator: Operator,
  source: Float64Array,
  u: Float64Array,
  spacing: Spacing,
): Generator<SolveProgress | undefined, Solved & { readonly bytesPerUnknown: number }> {
  const stack = preconditioner === 'jacobi' ? undefined : yield* buildMultigrid(operator, spacing)
  const precondition =
    stack === undefined
      ? jacobi(operator)
      : (r: Float64Array, z: Float64Array) => applyMultigrid(stack, r, z)
  const solved = yield* solveByConjugateGradients(operator, source, u, precondition, tolerance)
  const { layout, linkX, linkY, linkZ, toAir, diagonal, inverse } = operator
  const own = [linkX, linkY, linkZ, toAir, diagonal, inverse, source, u, layout.numberAt]
  const bytes = own.reduce((sum, a) => sum + a.byteLength, solved.bytes + (stack?.bytes ?? 0))
  return { ...solved, bytesPerUnknown: bytes / layout.count }
}

/** What the faces are, apart from their heat and temperature. */
const shapeOf = ({ count, centreM, areaM2, direction, environment, block }: AirFaces) => ({
  count,
  centreM,
  areaM2: Float32Array.from(areaM2),
  direction,
  environment,
  block,
})
