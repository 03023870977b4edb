import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { Design } from '../../src/design/schema.ts'
import { setField } from '../../src/design/setField.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import { solveHiveField } from '../../src/reports/heat/field/solveHiveField.ts'
import { type FieldQuestion, solveWorld } from '../../src/solvers/conduction/solveWorld.ts'
import { WorldError } from '../../src/solvers/conduction/worldError.ts'
import { createAnswerHeat } from '../../src/workers/answerHeat.ts'
import type { HeatJob } from '../../src/workers/fieldMessages.ts'

const preview = (design: Design): HeatJob => ({ kind: 'field', design, quality: 'preview' })

const never = new AbortController().signal

const setUp = () => {
  const asked: FieldQuestion[] = []
  const answerHeat = createAnswerHeat(async (question) => {
    asked.push(question)
    return solveWorld(question)
  })
  return { asked, answerHeat }
}

const hiveOf = (design: Design) => {
  const built = deriveHive(design)
  if (built.kind === 'refused') throw new Error('Choose a design that can be built.')
  return built.hive
}

describe('createAnswerHeat', () => {
  it('answers what the solver answers at once', async () => {
    const { answerHeat } = setUp()
    const answer = solveHiveField(DEFAULT_DESIGN, hiveOf(DEFAULT_DESIGN), 'preview')
    expect(await answerHeat(preview(DEFAULT_DESIGN), never)).toEqual({ kind: 'field', answer })
  })

  it('starts from the field before, and needs less work for the same conductance', async () => {
    const { answerHeat, asked } = setUp()
    const thicker = setField(DEFAULT_DESIGN, 'walls.coreMm', 62).design
    await answerHeat(preview(DEFAULT_DESIGN), never)
    const warm = await answerHeat(preview(thicker), never)
    expect(asked.map(({ start }) => start === undefined)).toEqual([true, false])
    const cold = solveHiveField(thicker, hiveOf(thicker), 'preview')
    if (warm.kind !== 'field') throw new Error('There must be a field.')
    expect(warm.answer.iterations).toBeLessThan(cold.iterations)
    expect(warm.answer.conductanceWPerK).toBeCloseTo(cold.conductanceWPerK, 3)
  })

  it('solves nothing again when only what no heat feels has changed', async () => {
    const { answerHeat, asked } = setUp()
    const first = await answerHeat(preview(DEFAULT_DESIGN), never)
    const { keeper } = DEFAULT_DESIGN
    const design = {
      ...DEFAULT_DESIGN,
      keeper: { ...keeper, elbowHeightMm: keeper.elbowHeightMm + 50 },
    }
    expect(await answerHeat(preview(design), never)).toEqual(first)
    expect(asked).toHaveLength(1)
  })

  it('says in words why a design can not be built', async () => {
    const { answerHeat } = setUp()
    const low = { ...DEFAULT_DESIGN, frame: { ...DEFAULT_DESIGN.frame, topBarLengthMm: 460 } }
    const built = deriveHive(low)
    const message = built.kind === 'refused' ? built.refusals[0]?.message : undefined
    expect(await answerHeat(preview(low), never)).toEqual({ kind: 'failed', message })
  })

  it('leaves out of the comparisons a world without an answer', async () => {
    let asked = 0
    const answerHeat = createAnswerHeat(async () => {
      asked += 1
      throw new WorldError('none')
    })
    const job: HeatJob = { kind: 'comparisons', design: DEFAULT_DESIGN, others: [] }
    const comparisons = { remedies: [], baselines: [] }
    expect(await answerHeat(job, never)).toEqual({ kind: 'comparisons', comparisons })
    expect(asked).toBeGreaterThan(3)
  })

  it('asks no more once it is cancelled', async () => {
    const control = new AbortController()
    let asked = 0
    const answerHeat = createAnswerHeat(async (question) => {
      asked += 1
      control.abort()
      return solveWorld(question)
    })
    const job: HeatJob = { kind: 'comparisons', design: DEFAULT_DESIGN, others: [] }
    await expect(answerHeat(job, control.signal)).rejects.toThrow(/abort/i)
    expect(asked).toBe(1)
  })
})
