import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { setFrameCount } from '../../src/design/frameEdits.ts'
import { describeHive } from '../../src/panels/describeHive.ts'
import { outsideSize } from '../../src/panels/outsideSize.ts'
import { type Answers, answersFor } from '../../src/store/answers.ts'
import { METRIC } from '../../src/units/preferences.ts'

const built = answersFor(setFrameCount(DEFAULT_DESIGN, 12))

describe('describeHive', () => {
  it('says size, frames and checks in one sentence', () => {
    const { answer } = built
    if (answer === undefined) throw new Error('the default hive of 12 frames must be built')
    const size = outsideSize(answer.hive.dimensions, 'mm')
    const open = answer.report.checks.filter((check) => check.verdict !== 'ok').length
    const sentence = describeHive(built, METRIC)
    expect(sentence.startsWith(`Hive ${size}, 12 frames, `)).toBe(true)
    expect(sentence).toContain(open === 0 ? 'checks good' : `${open} check`)
  })

  it('says why there is no hive, and that the last one is shown', () => {
    const refusals = [{ field: 'walls.coreMm', message: 'Too thick.' }]
    const none: Answers = { answer: undefined, refusals, stale: true }
    expect(describeHive(none, METRIC)).toBe('No hive yet. Too thick.')
    const stale: Answers = { answer: built.answer, refusals, stale: true }
    expect(describeHive(stale, METRIC)).toContain('The present design cannot be built. Too thick.')
  })
})

describe('outsideSize', () => {
  it('rounds to what can be measured on a finished hive', () => {
    const { answer } = built
    if (answer === undefined) throw new Error('the default hive of 12 frames must be built')
    const dimensions = {
      ...answer.hive.dimensions,
      outerLength: 1040.4,
      outerWidth: 559.6,
      outerHeight: 508,
    }
    expect(outsideSize(dimensions, 'mm')).toBe('1040 × 560 × 508 mm')
    // 508 mm is 20 in exactly.
    expect(outsideSize(dimensions, 'in').endsWith('× 20 in')).toBe(true)
  })
})
