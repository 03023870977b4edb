import { describe, expect, it } from 'vitest'
import { findCheck, reportOn, SAMPLE, withFields } from './sampleHive.ts'

const checksWith = (tools: string) =>
  reportOn(withFields(SAMPLE, [{ field: 'shop.tools', value: tools }]))

describe('checkBoards', () => {
  it('asks the table saw for its widest rip, the others for what they can not rip', () => {
    const ids = (tools: string) =>
      checksWith(tools)
        .checks.map(({ id }) => id)
        .filter((id) => ['widest-rip', 'narrow-strips', 'rips-without-saw'].includes(id))
    expect(ids('table-saw')).toEqual(['widest-rip'])
    expect(ids('circular-saw')).toEqual(['narrow-strips'])
    expect(ids('hand-tools')).toEqual(['rips-without-saw'])
  })

  it('counts fewer kinds of part with a circular saw than by hand, and no frames', () => {
    const circular = findCheck(checksWith('circular-saw').checks, 'narrow-strips')
    const { checks, shop } = checksWith('hand-tools')
    const byHand = findCheck(checks, 'rips-without-saw')
    expect(circular.measured).toBeGreaterThan(0)
    expect(byHand.measured).toBeGreaterThan(circular.measured ?? 0)
    const wooden = shop.cutList.filter(
      ({ bought, groups }) => !bought && !groups.includes('frames'),
    )
    expect(byHand.measured).toBeLessThan(wooden.length)
    expect(byHand.partIds.some((id) => id.startsWith('frame-'))).toBe(false)
  })
})
