import { describe, expect, it } from 'vitest'
import { describePlace } from '../../../../src/reports/heat/field/describePlace.ts'
import { BOX, SLOT } from './syntheticField.ts'

const HIVE = { ...BOX, openings: [SLOT, { ...SLOT, kind: 'vent' as const, wall: 'back' as const }] }

describe('describePlace', () => {
  it.each([
    [[0, 0, 200], 'floor', 'where the front wall, the left end wall and the floor meet'],
    [[1000, 300, -200], 'lid', 'where the back wall, the right end wall and the lid meet'],
    [[300, 0, -200], 'back-wall', 'where the back wall and the floor meet'],
    // In the rebate for the lugs: beyond the wall's inner face and below the lid.
    [[800, 280, 215], 'front-wall', 'where the front wall and the lid meet'],
    [[500, 300, -150], 'lid', 'on the lid near the back wall'],
    [[500, 300, 0], 'lid', 'in the middle of the lid'],
    [[500, 110, 200], 'front-wall', 'on the front wall, near an entrance'],
    [[500, 0, 200], 'floor', 'where the front wall and the floor meet, near an entrance'],
    [[0, 0, 200], 'left-wall', 'where the front wall, the left end wall and the floor meet'],
    [[500, 45, 230], 'entrance', 'on the front wall, near an entrance'],
  ] as const)('calls %o of %s: %s', (point, side, words) => {
    expect(describePlace(HIVE, point, side)).toBe(words)
  })

  it('tells vents from entrances', () => {
    const vents = { ...BOX, openings: [{ ...SLOT, kind: 'vent' as const }] }
    expect(describePlace(vents, [500, 110, 200], 'front-wall')).toBe(
      'on the front wall, near a vent',
    )
  })
})
