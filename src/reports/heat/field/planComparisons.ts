import type { Design } from '../../../design/schema.ts'
import { deriveHive } from '../../../hive/deriveHive.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { FieldAnswer } from '../../../solvers/conduction/fieldAnswer.ts'
import { fitMesh } from '../../../solvers/conduction/fitMesh.ts'
import type { FieldQuestion } from '../../../solvers/conduction/solveWorld.ts'
import type { World } from '../../../solvers/conduction/world.ts'
import { type BaselineWorld, baselineWorlds } from './baselines.ts'
import { buildHiveHeatModel } from './buildHiveHeatModel.ts'
import type { BaselineAnswer, HeatComparisons, RemedyAnswer } from './heatComparisons.ts'
import { HEAT_MESHES, type HeatMesh } from './meshes.ts'
import { remedyModels } from './remedies.ts'

/** A design that is held against the present one. */
export interface OtherDesign {
  readonly id: string
  readonly name: string
  readonly design: Design
}

/** All that a comparison needs to know of a field. */
export type Conductances = Pick<FieldAnswer, 'conductanceWPerK' | 'lowerWPerK' | 'upperWPerK'>

/** Asks for fields as it goes, like `HiveFieldPlan`. */
type Plan<Result> = Generator<FieldQuestion, Result, Conductances>

export type ComparisonsPlan = Plan<HeatComparisons>

/** Fine enough for a certain band of about half a percent, and several of them in a few seconds. */
const BASELINE_MESH: HeatMesh = {
  mesh: { leastCellM: 0.012, growth: 1.7, greatestCellM: 0.06, cellsPerGap: 1, mergeM: 0.001 },
  tolerance: 1e-4,
  slopeSteps: 4,
  mostCells: 400_000,
}

/**
 * What would keep more heat in, and what other homes lose, the user's other designs among them. What
 * can't be built or has no conductance is left out.
 */
export function* planComparisons(
  design: Design,
  hive: Hive,
  others: readonly OtherDesign[],
): ComparisonsPlan {
  const remedies = yield* planRemedies(design, hive)
  const baselines: BaselineAnswer[] = []
  for (const baseline of baselineWorlds(hive)) baselines.push(...(yield* planBaseline(baseline)))
  for (const other of others) {
    for (const world of worldOfOther(other)) baselines.push(...(yield* planBaseline(world)))
  }
  return { remedies, baselines }
}

/** Both hives on the coarse mesh: what it gets wrong, it gets wrong alike. */
function* planRemedies(design: Design, hive: Hive): Plan<readonly RemedyAnswer[]> {
  const { slopeSteps } = HEAT_MESHES.preview
  const { world } = buildHiveHeatModel(design, hive, { slopeSteps })
  const before = yield questionOf(world, HEAT_MESHES.preview)
  const answers: RemedyAnswer[] = []
  for (const { id, name, how, model } of remedyModels(design, hive, { slopeSteps })) {
    const { conductanceWPerK } = yield questionOf(model.world, HEAT_MESHES.preview)
    if (conductanceWPerK === undefined || before.conductanceWPerK === undefined) continue
    const savedWPerK = before.conductanceWPerK - conductanceWPerK
    answers.push({ id, name, how, conductanceWPerK, savedWPerK })
  }
  return answers
}

function* planBaseline({ world, ...known }: BaselineWorld): Plan<readonly BaselineAnswer[]> {
  const { conductanceWPerK, lowerWPerK, upperWPerK } = yield questionOf(world, BASELINE_MESH)
  if (conductanceWPerK === undefined || lowerWPerK === undefined || upperWPerK === undefined) {
    return []
  }
  return [{ ...known, conductanceWPerK, lowerWPerK, upperWPerK }]
}

const questionOf = (world: World, { mesh, tolerance, mostCells }: HeatMesh): FieldQuestion => ({
  world,
  mesh: fitMesh(world, mesh, mostCells),
  tolerance,
})

const worldOfOther = ({ id, name, design }: OtherDesign): readonly BaselineWorld[] => {
  const built = deriveHive(design)
  if (built.kind === 'refused') return []
  const { cavityLength, cavityWidth, coverLedgeHeight } = built.hive.dimensions
  const { world } = buildHiveHeatModel(design, built.hive, BASELINE_MESH)
  const size = [cavityLength, cavityWidth, coverLedgeHeight].map(Math.round).join(' × ')
  return [
    {
      id: `saved-${id}`,
      name,
      about: `One of your designs, as it was when you put it in the list: ${size} mm inside.`,
      volumeL: (cavityLength * cavityWidth * coverLedgeHeight) / MM3_PER_L,
      world,
    },
  ]
}

const MM3_PER_L = 1e6
