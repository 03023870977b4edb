import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import { computeHeat } from '../../../../src/reports/heat/computeHeat.ts'
import { HEAT_MESHES } from '../../../../src/reports/heat/field/meshes.ts'
import { planHiveField } from '../../../../src/reports/heat/field/planHiveField.ts'
import { solveHiveField } from '../../../../src/reports/heat/field/solveHiveField.ts'
import { type FieldQuestion, solveWorld } from '../../../../src/solvers/conduction/solveWorld.ts'
import { withFields } from '../../checks/sampleHive.ts'

const hiveOf = (design: Design) => {
  const built = deriveHive(design)
  if (built.kind === 'refused') throw new Error(built.refusals[0]?.message)
  return built.hive
}

/** Answers the questions of a full answer by the preview's mesh, which is enough to see the order. */
const driveFull = (design: Design) => {
  const asked: FieldQuestion[] = []
  const plan = planHiveField(design, hiveOf(design), 'full')
  let step = plan.next()
  while (step.done !== true) {
    asked.push(step.value)
    const { mesh, tolerance } = HEAT_MESHES.preview
    step = plan.next(solveWorld({ world: step.value.world, mesh, tolerance }))
  }
  return { asked, answer: step.value }
}

const FLAT = withFields(DEFAULT_DESIGN, [{ field: 'lid.form', value: 'flat' }])

describe('planHiveField', () => {
  it('asks for the field in full, then twice on the coarse mesh for what the steps cost', () => {
    const { asked, answer } = driveFull(DEFAULT_DESIGN)
    expect(asked.map(({ mesh }) => mesh)).toEqual([
      ...[HEAT_MESHES.full.mesh, HEAT_MESHES.preview.mesh, HEAT_MESHES.preview.mesh],
    ])
    const [first, once, twice] = asked.map(({ world }) => world.blocks.length)
    expect(once).toBe(first)
    expect(twice).toBeGreaterThan(once ?? 0)
    // Twice as many steps change little, or there would be too few of them.
    expect(answer.slopeStepError).toBeGreaterThan(0)
    expect(answer.slopeStepError).toBeLessThan(0.002)
  })

  it('has no step error where nothing slopes', () => {
    const { asked, answer } = driveFull(FLAT)
    expect(asked).toHaveLength(1)
    expect(answer.slopeStepError).toBe(0)
  })
})

describe('solveHiveField', () => {
  const hive = hiveOf(DEFAULT_DESIGN)
  const answer = solveHiveField(DEFAULT_DESIGN, hive, 'preview')
  const heat = computeHeat(DEFAULT_DESIGN, hive)

  it('converges to a band that a preview may have', () => {
    expect(answer).toMatchObject({ quality: 'preview', hasConverged: true, slopeStepError: 0 })
    expect(answer.lowerWPerK).toBeLessThan(answer.conductanceWPerK)
    expect(answer.upperWPerK).toBeGreaterThan(answer.conductanceWPerK)
    expect(answer.upperWPerK / answer.lowerWPerK).toBeLessThan(1.025)
  })

  it('adds up in every way of sharing the loss out', () => {
    const whole = answer.conductanceWPerK
    const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0)
    const entrances = answer.shares.find(({ id }) => id === 'entrances')?.conductanceWPerK ?? 0
    expect(sum(answer.panels.map((p) => p.conductanceWPerK)) + entrances).toBeCloseTo(whole, 9)
    expect(sum(answer.shares.map(({ share }) => share))).toBeCloseTo(1, 12)
    const byLayers = sum(heat.panels.map((p) => p.conductanceWPerK))
    expect(byLayers + sum(answer.edges.map((e) => e.extraWPerK))).toBeCloseTo(whole, 6)
  })

  it('gives a hive that is alike in front and behind like long walls, but for the entrances', () => {
    const [front, back] = answer.panels.map(({ resistanceM2KPerW }) => resistanceM2KPerW)
    expect((front ?? 0) / (back ?? 1)).toBeGreaterThan(0.97)
    expect((front ?? 0) / (back ?? 1)).toBeLessThan(1)
  })

  it('finds every panel to resist less than its layers, for edges take their share', () => {
    const kept = answer.panels.map(
      ({ id, resistanceM2KPerW }) =>
        resistanceM2KPerW / (heat.panels.find((p) => p.id === id)?.withRailsM2KPerW ?? 0),
    )
    expect(Math.max(...kept)).toBeLessThan(1)
    expect(Math.min(...kept)).toBeGreaterThan(0.4)
  })

  it('finds it coldest in a corner of the floor', () => {
    expect(answer.coldest.place).toMatch(/wall, the (left|right) end wall and the floor meet$/)
    expect(answer.coldest.pointMm[1]).toBe(0)
    expect(answer.coldest.fRsi).toBeGreaterThan(0.4)
    expect(answer.coldest.fRsi).toBeLessThan(0.65)
  })
})
