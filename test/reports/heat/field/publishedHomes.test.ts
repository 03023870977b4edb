import { describe, expect, it } from 'vitest'
import { publishedHomesWords } from '../../../../src/reports/heat/field/publishedHomes.ts'

const BOX = { id: 'plain-box', conductanceWPerK: 5 }
const TRUNK = { id: 'trunk', conductanceWPerK: 1.25 }

describe('publishedHomesWords', () => {
  it('holds the baselines against the published ratios', () => {
    const [times, masses] = publishedHomesWords(1.6, [BOX, TRUNK])
    // 5 / 1.25
    expect(times).toContain('loses 4.0 times as much as the trunk')
    // 2 kg over 5, 1.25 and 1.6 W/K
    expect(masses).toContain('0.4 in the plain box, 1.6 in the trunk and 1.3 in this hive')
  })

  it('says nothing while one of them is missing', () => {
    expect(publishedHomesWords(1.6, [BOX])).toEqual([])
    expect(publishedHomesWords(1.6, [])).toEqual([])
  })
})
