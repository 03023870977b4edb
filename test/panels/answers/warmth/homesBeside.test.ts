import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import { setFrameCount } from '../../../../src/design/frameEdits.ts'
import { homesBeside, savedBaselineId } from '../../../../src/panels/answers/warmth/homesBeside.ts'
import type { BaselineAnswer } from '../../../../src/reports/heat/field/heatComparisons.ts'
import { nameSaved } from '../../../../src/store/savedDesigns.ts'

const OWN = { conductanceWPerK: 1.2, lowerWPerK: 1.1, upperWPerK: 1.3 }

const home = (id: string, conductanceWPerK: number): BaselineAnswer => ({
  id,
  name: id,
  about: `About ${id}.`,
  volumeL: 100,
  conductanceWPerK,
  lowerWPerK: conductanceWPerK,
  upperWPerK: conductanceWPerK,
})

const saved = nameSaved([DEFAULT_DESIGN, setFrameCount(DEFAULT_DESIGN, 12)])
const [first, second] = saved
if (first === undefined || second === undefined) throw new Error('There must be two designs.')

describe('homesBeside', () => {
  it('lists the warmest first, with this hive in its place', () => {
    const homes = homesBeside(OWN, [home('box', 4), home('trunk', 0.5)], [])
    expect(homes.map(({ id, kind }) => [id, kind])).toEqual([
      ['trunk', 'baseline'],
      ['this', 'this'],
      ['box', 'baseline'],
    ])
  })

  it('gives saved designs their figures, and puts those without at the end', () => {
    const homes = homesBeside(OWN, [home(savedBaselineId(second), 0.9)], saved)
    expect(homes.map(({ name }) => name)).toEqual([second.name, 'This hive', first.name])
    expect(homes[0]?.figures?.conductanceWPerK).toBe(0.9)
    expect(homes[2]?.figures).toBeUndefined()
  })

  it('forgets the figures of a design that was taken out', () => {
    const homes = homesBeside(OWN, [home(savedBaselineId(first), 0.9)], [])
    expect(homes.map(({ id }) => id)).toEqual(['this'])
  })

  it('is empty when nothing is known', () => {
    expect(homesBeside(undefined, [], [])).toEqual([])
  })
})
