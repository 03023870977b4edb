import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { HeatFieldAnswer } from '../../src/reports/heat/field/heatFieldAnswer.ts'
import { useCuttingPlan } from '../../src/store/cuttingPlan.ts'
import { useHeatField } from '../../src/store/heatField.ts'
import { isCuttingKnown, isHeatKnown } from '../../src/store/knownEnough.ts'
import { waitUntil } from '../../src/store/waitUntil.ts'

const field = useHeatField
const initial = field.getInitialState()
afterEach(() => field.setState(initial, true))

const PREVIEW = { quality: 'preview' } as HeatFieldAnswer
const FULL = { quality: 'full' } as HeatFieldAnswer
const design = DEFAULT_DESIGN

const wait = () => {
  let isOver = false
  let ring = () => {}
  let isRunning = true
  const timer = (call: () => void) => {
    ring = call
    return () => {
      isRunning = false
    }
  }
  const waited = waitUntil(isHeatKnown(design), { store: field, timer, mostMs: 10 }).then(() => {
    isOver = true
  })
  /** Whether the wait is over by now. */
  const look = async () => {
    await Promise.resolve()
    await Promise.resolve()
    return isOver
  }
  return { waited, look, ring: () => ring(), isRunning: () => isRunning }
}

describe('waitUntil the heat is known', () => {
  it('waits for the full answer and the comparisons of this very design', async () => {
    const { look, isRunning } = wait()
    field.setState({ answer: PREVIEW, answerDesign: design })
    field.setState({ answer: FULL, answerDesign: { ...design } })
    field.setState({ answer: FULL, answerDesign: design, comparisonsDesign: { ...design } })
    expect(await look()).toBe(false)
    field.setState({ comparisonsDesign: design })
    expect(await look()).toBe(true)
    expect(isRunning()).toBe(false)
  })

  it('waits no time when all is known', async () => {
    field.setState({ answer: FULL, answerDesign: design, comparisonsDesign: design })
    expect(await wait().look()).toBe(true)
  })

  it('gives up when there can be no answer, and when the time is over', async () => {
    const late = wait()
    expect(await late.look()).toBe(false)
    late.ring()
    expect(await late.look()).toBe(true)
    const vain = wait()
    field.setState({ problem: 'There is no matter.' })
    expect(await vain.look()).toBe(true)
  })
})

describe('isCuttingKnown', () => {
  const jobs = { hives: 1, lumber: [], sheets: [], problems: [] }
  const state = useCuttingPlan.getInitialState()
  const plan = { jobs, lumber: [], sheets: [], isFinal: true }

  it('wants the last word on these very jobs, or none to be hoped for', () => {
    const isKnown = isCuttingKnown(jobs)
    expect(isKnown(state)).toBe(false)
    expect(isKnown({ ...state, plan: { ...plan, isFinal: false } })).toBe(false)
    expect(isKnown({ ...state, plan: { ...plan, jobs: { ...jobs, hives: 2 } } })).toBe(false)
    expect(isKnown({ ...state, plan })).toBe(true)
    expect(isKnown({ ...state, problem: 'The thread ended.' })).toBe(true)
  })
})
