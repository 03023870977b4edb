import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { HeatFieldAnswer } from '../../src/reports/heat/field/heatFieldAnswer.ts'
import { useHeatField } from '../../src/store/heatField.ts'
import { waitForHeat } from '../../src/store/waitForHeat.ts'

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
  const waited = waitForHeat(design, { field, timer, mostMs: 10 }).then(() => {
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

describe('waitForHeat', () => {
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
