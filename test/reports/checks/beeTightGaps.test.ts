import { describe, expect, it } from 'vitest'
import { checkBeeTightGaps } from '../../../src/reports/checks/beeTightGaps.ts'
import { at, piece } from '../shop/pieces.ts'
import { findCheck, SAMPLE } from './sampleHive.ts'

const sealWith = (frontLow: number, endLow: number) =>
  findCheck(
    checkBeeTightGaps({
      design: SAMPLE,
      hive: {
        parts: [
          piece([at(0, frontLow, 0, 900, 400, 12)], { group: 'front-wall' }),
          // A rail higher up is not the lower edge.
          piece([at(0, 200, 12, 900, 28, 60)], { group: 'front-wall' }),
          piece([at(0, endLow, 0, 12, 400, 400)], { group: 'left-wall' }),
        ],
      },
    }),
    'floor-seal',
  )

describe('checkBeeTightGaps', () => {
  it('measures from the floor to the lowest edge of each wall', () => {
    expect(sealWith(0, 0)).toMatchObject({ measured: 0, verdict: 'ok' })
    expect(sealWith(0, 3)).toMatchObject({ measured: 3, verdict: 'ok' })
    expect(sealWith(3.5, 0)).toMatchObject({ measured: 3.5, verdict: 'fix' })
  })
})
