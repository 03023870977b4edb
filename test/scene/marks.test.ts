import { describe, expect, it } from 'vitest'
import { marksOf, partTint } from '../../src/scene/marks.ts'

const NOTHING = { selectedPartIds: [], hoveredPartId: undefined, assembly: undefined }
const STEP = { solid: ['old'], fresh: ['new'] }

const tintIn = (id: string, change: Partial<Parameters<typeof marksOf>[0]>): number =>
  partTint(id, marksOf({ ...NOTHING, ...change }))

describe('partTint', () => {
  it('leaves what is not marked as it is', () => {
    expect(tintIn('old', {})).toBe(0)
  })

  it('turns the selected part more amber than the hovered one', () => {
    const hovered = tintIn('old', { hoveredPartId: 'old' })
    expect(hovered).toBeGreaterThan(0)
    expect(tintIn('old', { selectedPartIds: ['old'] })).toBeGreaterThan(hovered)
  })

  it('makes what is new in a step amber and what stood there before pale', () => {
    expect(tintIn('new', { assembly: STEP })).toBeGreaterThan(0)
    expect(tintIn('old', { assembly: STEP })).toBeLessThan(0)
  })

  it('still shows what is selected and hovered in a step', () => {
    const fresh = tintIn('new', { assembly: STEP })
    expect(tintIn('new', { assembly: STEP, selectedPartIds: ['new'] })).toBeGreaterThan(fresh)
    expect(tintIn('old', { assembly: STEP, selectedPartIds: ['old'] })).toBeGreaterThan(fresh)
    expect(tintIn('new', { assembly: STEP, hoveredPartId: 'new' })).toBeGreaterThan(fresh)
    const pale = tintIn('old', { assembly: STEP })
    expect(tintIn('old', { assembly: STEP, hoveredPartId: 'old' })).toBeGreaterThan(pale)
  })
})
