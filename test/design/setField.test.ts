import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  DEFAULT_DEFECT,
  DEFAULT_DESIGN,
  DEFAULT_ENTRANCE,
  DEFAULT_GOODS,
  DEFAULT_LUMBER,
  DEFAULT_MADE,
  DEFAULT_SHEET,
  DEFAULT_VENT,
} from '../../src/design/defaults.ts'
import { editField } from '../../src/design/editField.ts'
import { FIELD_TABLES, fieldAt, fieldTitle } from '../../src/design/fieldAt.ts'
import { designSchema } from '../../src/design/schema.ts'
import { applyChanges, setField } from '../../src/design/setField.ts'
import { arbitrarySchemaDesign, arbitraryValue } from './arbitraryDesign.ts'

/** A path to any field, of the first opening where it is in a list. */
const anyPath = fc.constantFrom(
  ...[...FIELD_TABLES].flatMap(([group, fields]) =>
    Object.keys(fields).map((key) => `${group.replaceAll('*', '0')}.${key}`),
  ),
)
const anything = fc.oneof(fc.string(), fc.boolean(), fc.double(), fc.integer())

describe('setField', () => {
  it('sets the one field and shares the rest', () => {
    const { design, limited } = setField(DEFAULT_DESIGN, 'walls.coreMm', 75)
    expect(design).toEqual({ ...DEFAULT_DESIGN, walls: { ...DEFAULT_DESIGN.walls, coreMm: 75 } })
    expect(design.lid).toBe(DEFAULT_DESIGN.lid)
    expect(limited).toBeUndefined()
  })

  it('reaches into the list of entrances', () => {
    const { design } = setField(DEFAULT_DESIGN, 'openings.entrances.0.heightMm', 10)
    expect(design.openings.entrances).toEqual([{ ...DEFAULT_ENTRANCE, heightMm: 10 }])
    expect(design.openings.landingBoards).toBe(DEFAULT_DESIGN.openings.landingBoards)
  })

  it('moves numbers into their range, and to whole ones where halves make no sense', () => {
    expect(setField(DEFAULT_DESIGN, 'walls.coreMm', 900)).toEqual({
      design: setField(DEFAULT_DESIGN, 'walls.coreMm', 250).design,
      limited:
        'Walls: Insulation thickness must be a number from 10 to 250 mm, so it became 250 mm.',
    })
    expect(setField(DEFAULT_DESIGN, 'walls.coreMm', -1).design.walls.coreMm).toBe(10)
    expect(setField(DEFAULT_DESIGN, 'cavity.frames', 21.6).design.cavity.frames).toBe(22)
    expect(
      setField(DEFAULT_DESIGN, 'cavity.frames', Number.POSITIVE_INFINITY).design.cavity.frames,
    ).toBe(200)
  })

  it('gives the very same design when the value is there already', () => {
    expect(setField(DEFAULT_DESIGN, 'walls.coreMm', 60)).toEqual({
      design: DEFAULT_DESIGN,
      limited: undefined,
    })
    expect(setField(DEFAULT_DESIGN, 'walls.coreMm', 60).design).toBe(DEFAULT_DESIGN)
  })

  it.each([
    ['walls.coreMm', Number.NaN],
    ['walls.coreMm', '60'],
    ['walls.insulation', 'spruce'],
    ['lid.form', 'toString'],
    ['floor.tray', 1],
    ['walls.colour', 'red'],
    ['openings.entrances.3.heightMm', 9],
    ['openings.vents.0.heightMm', 9],
    ['__proto__.polluted', 1],
    ['walls.constructor', 1],
    ['version', 2],
    ['', 1],
  ])('leaves the design as it is for %s = %s, and says why', (path, value) => {
    const { design, limited } = setField(DEFAULT_DESIGN, path, value)
    expect(design).toBe(DEFAULT_DESIGN)
    expect(limited).toMatch(/must be|has no field/)
  })

  it('cuts a text that is too long, never inside a letter', () => {
    const { design, limited } = setField(DEFAULT_DESIGN, 'title.name', `${'a'.repeat(79)}𝄞`)
    expect(design.title.name).toBe('a'.repeat(79))
    expect(limited).toMatch(/was cut to fit/)
  })

  it('keeps every design valid, whatever is set', () => {
    fc.assert(
      fc.property(arbitrarySchemaDesign(), anyPath, anything, (design, path, value) => {
        expect(designSchema.safeParse(setField(design, path, value).design).success).toBe(true)
      }),
    )
  })

  it('sets every valid value of every field exactly', () => {
    const design = {
      ...DEFAULT_DESIGN,
      openings: { ...DEFAULT_DESIGN.openings, vents: [DEFAULT_VENT] },
      stock: {
        lumber: [{ ...DEFAULT_LUMBER, defects: [DEFAULT_DEFECT] }],
        sheets: [DEFAULT_SHEET],
        goods: [DEFAULT_GOODS],
      },
      made: [DEFAULT_MADE],
    }
    for (const [group, fields] of FIELD_TABLES) {
      const path = group.replaceAll('*', '0')
      for (const [key, field] of Object.entries(fields)) {
        const [value] = fc.sample(arbitraryValue(field), 1)
        if (value === undefined) throw new Error('no sample')
        const set = setField(design, `${path}.${key}`, value)
        expect(set.limited).toBeUndefined()
        const held = `${path}.${key}`
          .split('.')
          .reduce<unknown>((node, step) => (node as Record<string, unknown>)[step], set.design)
        expect(held).toBe(value)
      }
    }
  })
})

describe('applyChanges', () => {
  it('sets all fields in order, and skips what it may not set', () => {
    const design = applyChanges(DEFAULT_DESIGN, [
      { field: 'walls.coreMm', value: 70 },
      { field: 'walls.nothing', value: 1 },
      { field: 'walls.coreMm', value: 80 },
      { field: 'cavity.closure', value: 'cloth' },
    ])
    expect(design.walls.coreMm).toBe(80)
    expect(design.cavity.closure).toBe('cloth')
  })

  it('gives the very same design for no change', () => {
    expect(applyChanges(DEFAULT_DESIGN, [])).toBe(DEFAULT_DESIGN)
  })
})

describe('fieldAt', () => {
  it('finds fields of groups, openings and lists', () => {
    expect(fieldAt('cavity.endBarSpaceMm')?.label).toBe('Bee space beside the frame')
    expect(fieldAt('openings.landingDepthMm')?.label).toBe('Landing board depth')
    expect(fieldAt('openings.vents.11.widthMm')?.label).toBe('Width')
    expect(fieldAt('stock.lumber.0.price')?.label).toBe('Price')
    expect(fieldAt('stock.lumber.3.defects.1.fromMm')?.label).toBe('Bad from')
    expect(fieldAt('made.399.lengthMm')?.label).toBe('Length')
  })

  it.each(['', 'walls', 'walls.', 'walls.coreMm.', 'openings.entrances.x.widthMm', 'constructor'])(
    'finds nothing at "%s"',
    (path) => {
      expect(fieldAt(path)).toBeUndefined()
    },
  )
})

describe('fieldTitle', () => {
  it.each([
    ['stock.lumber.0.price', 'Board 1: Price'],
    ['stock.lumber.2.defects.1.fromMm', 'Board 3, bad place 2: Bad from'],
    ['stock.lumber.2.defects', 'Board 3, bad places'],
    ['stock.sheets', 'Sheets'],
    ['stock', 'Stock'],
    ['stock.goods.4.id', 'Article 5: Article'],
    ['made.7.widthMm', 'Cut part 8: Width'],
    ['openings.entrances.1.heightMm', 'Entrance 2: Height'],
    ['shop.tools', 'Workshop: Saw'],
    ['nothing', 'nothing'],
  ])('calls %s %s', (path, title) => {
    expect(fieldTitle(path)).toBe(title)
  })
})

describe('editField', () => {
  it('brings along what a choice means', () => {
    const zander = editField(DEFAULT_DESIGN, 'frame.standard', 'zander').design
    expect(zander.frame.depthMm).toBe(220)
    const long = editField(DEFAULT_DESIGN, 'cavity.frames', 40).design
    expect(long.cavity.followerAAfterFrame).toBe(24)
    const parted = editField(DEFAULT_DESIGN, 'cavity.divider', 'fitted').design
    expect(parted.openings.entrances).toHaveLength(2)
  })

  it('gives a second follower a place of its own', () => {
    const last = setField(DEFAULT_DESIGN, 'cavity.followerAAfterFrame', 20).design
    const { cavity } = editField(last, 'cavity.followers', 'two').design
    expect([cavity.followerAAfterFrame, cavity.followerBAfterFrame]).toEqual([19, 20])
  })

  it('reports what it limited, and refuses what is no value of the field', () => {
    expect(editField(DEFAULT_DESIGN, 'cavity.frames', 999).limited).toMatch(/became 200/)
    expect(editField(DEFAULT_DESIGN, 'frame.standard', 'barrel').design).toBe(DEFAULT_DESIGN)
  })

  it('is setField for every other field', () => {
    expect(editField(DEFAULT_DESIGN, 'lid.coreMm', 90)).toEqual(
      setField(DEFAULT_DESIGN, 'lid.coreMm', 90),
    )
  })
})
