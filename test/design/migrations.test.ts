import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { MIGRATIONS, type Migration, migrate } from '../../src/design/migrations.ts'
import { readDesign } from '../../src/design/readDesign.ts'
import { DESIGN_VERSION } from '../../src/design/schema.ts'

// Invented: version 2 renames a field, version 3 turns centimetres into millimetres.
const rename: Migration = {
  from: 1,
  apply: ({ tall, ...rest }) => ({ ...rest, height: tall }),
}
const toMillimetres: Migration = {
  from: 2,
  apply: ({ height, ...rest }) => ({ ...rest, heightMm: Number(height) * 10 }),
}
const chain = [rename, toMillimetres]

describe('MIGRATIONS', () => {
  it('leads without a gap to the version that this program writes', () => {
    expect(migrate({}, 1).kind).toBe('ok')
    expect(MIGRATIONS.length + 1).toBe(DESIGN_VERSION)
  })
})

describe('the step to version 2', () => {
  const { stock: _, made: __, shop: ___, ...older } = DEFAULT_DESIGN
  const oldShop = { kerfMm: 2.8, ripLimitMm: 600, longestBoardMm: 3000 }
  const readOld = (shop: object) =>
    readDesign({ combwright: 1, ...older, version: 1, shop: { ...oldShop, ...shop } })

  it.each([
    [true, 'table-saw'],
    [false, 'circular-saw'],
  ])('makes of a table saw %s the tools %s, and keeps the rest', (tableSaw, tools) => {
    expect(readOld({ tableSaw })).toEqual({
      kind: 'ok',
      design: { ...DEFAULT_DESIGN, shop: { ...DEFAULT_DESIGN.shop, ...oldShop, tools } },
      migratedFrom: 1,
      filled: [],
    })
  })

  it('fills what the old file left out, and tells what was wrong in it', () => {
    expect(readOld({})).toMatchObject({ kind: 'ok', filled: ['shop.tools'] })
    expect(readOld({ tableSaw: 'yes' })).toMatchObject({
      kind: 'bad',
      problems: [{ field: 'shop.tools' }],
    })
    expect(readDesign({ combwright: 1, shop: 5 })).toMatchObject({
      kind: 'bad',
      problems: [{ field: 'shop' }],
    })
    expect(readDesign({ combwright: 1, title: older.title })).toMatchObject({
      kind: 'ok',
      design: { shop: DEFAULT_DESIGN.shop },
    })
  })
})

describe('migrate', () => {
  it('applies every step from the given version on, in order', () => {
    expect(migrate({ tall: 4 }, 1, chain)).toEqual({ kind: 'ok', json: { heightMm: 40 } })
    expect(migrate({ height: 5 }, 2, chain)).toEqual({ kind: 'ok', json: { heightMm: 50 } })
  })

  it('leaves the present version as it is', () => {
    const json = { heightMm: 60 }
    expect(migrate(json, 3, chain)).toEqual({ kind: 'ok', json })
  })

  it('refuses lists with a gap, out of order or with a step twice', () => {
    for (const bad of [[toMillimetres], [toMillimetres, rename], [rename, rename]]) {
      expect(migrate({}, 1, bad)).toMatchObject({ kind: 'bad' })
    }
    expect(migrate({}, 1, [rename, { ...toMillimetres, from: 3 }])).toEqual({
      kind: 'bad',
      message: 'The step from version 2 to 3 is missing.',
    })
  })

  it('refuses versions that never were', () => {
    for (const from of [0, -1, 1.5, 4, Number.NaN]) {
      expect(migrate({}, from, chain)).toMatchObject({ kind: 'bad' })
    }
  })

  it('gives a message when a step fails on damaged data', () => {
    const fragile: Migration = {
      from: 1,
      apply: ({ list }) => ({ list: (list as string[]).toReversed() }),
    }
    expect(migrate({ list: 3 }, 1, [fragile])).toMatchObject({
      kind: 'bad',
      message: expect.stringMatching(/version 1 is damaged/),
    })
  })
})

describe('readDesign', () => {
  // Invented: in version 1 the walls stood under another name.
  const renameWalls: Migration = {
    from: 1,
    apply: ({ sides, ...rest }) => ({ ...rest, walls: sides }),
  }

  it('brings an old design up to date and says from which version', () => {
    const { walls, version: _, ...rest } = DEFAULT_DESIGN
    const old = { combwright: 1, version: 1, ...rest, sides: { ...walls, coreMm: 75 } }
    expect(readDesign(old, [renameWalls])).toEqual({
      kind: 'ok',
      design: { ...DEFAULT_DESIGN, walls: { ...walls, coreMm: 75 } },
      migratedFrom: 1,
      filled: [],
    })
  })

  it('reads the newest version of a chain without a migration', () => {
    const present = { combwright: 2, ...DEFAULT_DESIGN, version: 2 }
    expect(readDesign(present, [renameWalls])).toMatchObject({
      kind: 'ok',
      migratedFrom: undefined,
    })
  })
})
