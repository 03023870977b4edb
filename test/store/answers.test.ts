import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { setField } from '../../src/design/setField.ts'
import type { HeatFieldAnswer } from '../../src/reports/heat/field/heatFieldAnswer.ts'
import { solveHiveField } from '../../src/reports/heat/field/solveHiveField.ts'
import { answersFor } from '../../src/store/answers.ts'
import { useHeatField } from '../../src/store/heatField.ts'

const initial = useHeatField.getInitialState()
afterEach(() => useHeatField.setState(initial, true))

const design = setField(DEFAULT_DESIGN, 'walls.coreMm', 62).design
const other = setField(DEFAULT_DESIGN, 'walls.coreMm', 64).design

const hive = answersFor(design).answer?.hive
if (hive === undefined) throw new Error('Choose a design that can be built.')
const field: HeatFieldAnswer = solveHiveField(design, hive, 'preview')

const take = (answer: HeatFieldAnswer, answerDesign = design) =>
  useHeatField.setState({ answer, answerDesign })

describe('answersFor', () => {
  it('gives the very same answers while nothing changes', () => {
    const first = answersFor(design)
    expect(answersFor(design)).toBe(first)
    take(field)
    const second = answersFor(design)
    expect(answersFor(design)).toBe(second)
    expect(second).not.toBe(first)
  })

  it('puts the field into the report when it comes, with the hive as it was', () => {
    const before = answersFor(design).answer
    expect(before?.report.heat.method).toBe('panel-sum')
    take(field)
    const { answer } = answersFor(design)
    expect(answer?.report.heat).toMatchObject({ method: 'field', field })
    expect(answer?.report.heat.conductanceWPerK).toBe(field.conductanceWPerK)
    expect(answer?.hive).toBe(before?.hive)
  })

  it('takes no field of another design', () => {
    take(field)
    expect(answersFor(other).answer?.report.heat.method).toBe('panel-sum')
    expect(answersFor(design).answer?.report.heat.method).toBe('field')
  })

  it('keeps the field of the last hive that could be built', () => {
    take(field)
    answersFor(design)
    const low = { ...design, frame: { ...design.frame, topBarLengthMm: 460 } }
    const { answer, stale } = answersFor(low)
    expect(stale).toBe(true)
    expect(answer?.report.heat.method).toBe('field')
  })
})
