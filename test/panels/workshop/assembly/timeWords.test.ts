import { describe, expect, it } from 'vitest'
import { timeWords } from '../../../../src/panels/workshop/assembly/timeWords.ts'

describe('timeWords', () => {
  it('says short times in minutes', () => {
    expect(timeWords([20, 40])).toBe('About 20 to 40 minutes.')
    expect(timeWords([15, 15])).toBe('About 15 minutes.')
  })

  it('says long times in half hours', () => {
    expect(timeWords([125, 205])).toBe('About 2 to 3 1/2 hours.')
    expect(timeWords([118, 121])).toBe('About 2 hours.')
  })

  it('keeps silent about no time at all', () => {
    expect(timeWords([0, 0])).toBe('')
  })
})
