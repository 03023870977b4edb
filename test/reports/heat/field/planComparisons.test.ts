import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import { EXAMPLES } from '../../../../src/design/examples.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import {
  type Conductances,
  type OtherDesign,
  planComparisons,
} from '../../../../src/reports/heat/field/planComparisons.ts'
import type { FieldQuestion } from '../../../../src/solvers/conduction/solveWorld.ts'

const built = deriveHive(DEFAULT_DESIGN)
if (built.kind === 'refused') throw new Error('The default design must be built.')
const { hive } = built

const NONE: Conductances = {
  conductanceWPerK: undefined,
  lowerWPerK: undefined,
  upperWPerK: undefined,
}

/** Carries the plan out with made-up conductances: 10, 9, 8 and so on, each with a band of ±0.1. */
const carryOut = (
  others: readonly OtherDesign[],
  solve = (_question: FieldQuestion, n: number): Conductances => ({
    conductanceWPerK: 10 - n,
    lowerWPerK: 9.9 - n,
    upperWPerK: 10.1 - n,
  }),
) => {
  const plan = planComparisons(DEFAULT_DESIGN, hive, others)
  const questions: FieldQuestion[] = []
  let step = plan.next()
  while (step.done !== true) {
    questions.push(step.value)
    step = plan.next(solve(step.value, questions.length - 1))
  }
  return { ...step.value, questions }
}

const other = (design: Design): OtherDesign => ({ id: 'a1', name: 'My other hive', design })

describe('planComparisons', () => {
  it('asks for the hive as it is first, and holds the remedies against it on the same mesh', () => {
    const { remedies, questions } = carryOut([])
    expect(remedies.map((r) => [r.id, r.conductanceWPerK, r.savedWPerK])).toEqual([
      ['strip', 9, 1],
      ['staggered', 8, 2],
      ['foam-over', 7, 3],
    ])
    const [mesh] = questions.map((q) => q.mesh)
    expect(questions.slice(0, 4).map((q) => q.mesh)).toEqual([mesh, mesh, mesh, mesh])
    expect(questions[4]?.mesh.leastCellM).toBeLessThan(mesh?.leastCellM ?? 0)
  })

  it('gives each baseline its band', () => {
    const { baselines } = carryOut([])
    const figures = baselines.map((b) => [b.id, b.lowerWPerK, b.conductanceWPerK, b.upperWPerK])
    expect(figures).toEqual([
      ['plain-box', 5.9, 6, 6.1],
      ['trunk', 4.9, 5, 5.1],
    ])
  })

  it('adds other designs under their own names, with the size they have inside', () => {
    const design = EXAMPLES.at(-1)?.design ?? DEFAULT_DESIGN
    const saved = carryOut([other(design)]).baselines.at(-1)
    expect(saved).toMatchObject({ id: 'saved-a1', name: 'My other hive', conductanceWPerK: 4 })
    const size = / (\d+) × (\d+) × (\d+) mm inside\.$/.exec(saved?.about ?? '')?.slice(1)
    const litres = (size ?? []).reduce((product, mm) => product * Number(mm), 1e-6)
    // The three lengths are shown to the millimetre.
    expect(litres / (saved?.volumeL ?? 0)).toBeCloseTo(1, 2)
  })

  it('leaves out a design that can not be built', () => {
    const low = { ...DEFAULT_DESIGN, frame: { ...DEFAULT_DESIGN.frame, topBarLengthMm: 460 } }
    expect(deriveHive(low).kind).toBe('refused')
    expect(carryOut([other(low)]).baselines.map((b) => b.id)).toEqual(['plain-box', 'trunk'])
  })

  it('leaves out what has no conductance', () => {
    const found = carryOut([other(DEFAULT_DESIGN)], () => NONE)
    expect(found).toMatchObject({ remedies: [], baselines: [] })
  })
})
