import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { colonyStretches } from '../../src/design/rowRoom.ts'
import { designSchema } from '../../src/design/schema.ts'

const exampleById = (id: string) => {
  const example = EXAMPLES.find((row) => row.id === id)
  if (example === undefined) throw new Error(`no example ${id}`)
  return example.design
}

describe('EXAMPLES', () => {
  it('begins with the default design itself', () => {
    expect(EXAMPLES[0]?.design).toBe(DEFAULT_DESIGN)
  })

  it('has five with ids and names of their own', () => {
    expect(EXAMPLES).toHaveLength(5)
    expect(new Set(EXAMPLES.map((e) => e.id)).size).toBe(5)
    expect(new Set(EXAMPLES.map((e) => e.name)).size).toBe(5)
  })

  it.each(EXAMPLES)('$name is valid, carries its name and says that it is invented', (example) => {
    const { design, name } = example
    expect(designSchema.safeParse(design).error?.issues).toBeUndefined()
    expect(design.title.name).toBe(name)
    expect(design.title.owner).toMatch(/Quarry Lane .*\(invented\)/)
  })

  it.each(EXAMPLES)('$name has wood left behind the lugs and covers', ({ design }) => {
    const { frame, cavity, walls } = design
    const lug = (frame.topBarLengthMm - frame.bodyLengthMm) / 2 - cavity.endBarSpaceMm
    const seat = Math.max(walls.liningMm, lug + cavity.lugClearanceMm)
    // 12 mm of timber must stay outside both ledges.
    const strip = walls.liningMm + walls.coreMm - seat - cavity.coverLedgeMm
    expect(strip).toBeGreaterThanOrEqual(12)
  })

  it('gives each of two colonies fourteen frames and an entrance at its far end', () => {
    const design = exampleById('two-colony-school')
    const { cavity, openings } = design
    expect(cavity).toMatchObject({ frames: 28, divider: 'fitted', dividerAfterFrame: 14 })
    const [left, right] = openings.entrances.map((e) => e.centreMm)
    const [first, second] = colonyStretches(design, 'front')
    expect(openings.entrances).toHaveLength(2)
    expect(left).toBeLessThan(first.toMm / 2)
    expect(second && right && second.toMm - right).toBe(left)
  })

  it('has light walls and a low stand by the sea', () => {
    const { frame, walls, stand, cavity } = exampleById('seaside')
    expect([frame.form, cavity.frames, walls.coreMm]).toEqual(['single', 24, 30])
    expect(stand.workingHeightMm).toBeLessThan(DEFAULT_DESIGN.stand.workingHeightMm)
  })

  it('shades and vents the hive of the dry valley', () => {
    const { lid, openings } = exampleById('dry-valley')
    expect([lid.overhangMm, lid.insulationShape]).toEqual([80, 'tapered'])
    expect(openings.vents.map((vent) => vent.wall)).toEqual(['left', 'right'])
  })
})
