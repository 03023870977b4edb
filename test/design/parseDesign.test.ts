import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import {
  DEFAULT_DEFECT,
  DEFAULT_DESIGN,
  DEFAULT_ENTRANCE,
  DEFAULT_LUMBER,
  DEFAULT_MADE,
} from '../../src/design/defaults.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import { parseDesign } from '../../src/design/parseDesign.ts'
import { DESIGN_VERSION } from '../../src/design/schema.ts'
import { arbitraryDesign, arbitrarySchemaDesign } from './arbitraryDesign.ts'

/** The default design as a file, with some groups or fields replaced. */
const fileWith = (groups: object): string =>
  JSON.stringify({ combwright: DESIGN_VERSION, ...DEFAULT_DESIGN, ...groups })

const wallsWith = (fields: object): string =>
  fileWith({ walls: { ...DEFAULT_DESIGN.walls, ...fields } })

/** The fields and messages of a text that must be refused. */
const problemsOf = (text: string) => {
  const parsed = parseDesign(text)
  if (parsed.kind !== 'bad') throw new Error('The text was accepted.')
  return parsed.problems
}

const onlyMessage = (text: string): string => {
  const problems = problemsOf(text)
  expect(problems).toHaveLength(1)
  return problems[0]?.message ?? ''
}

describe('parseDesign', () => {
  it('reads back whatever was saved', () => {
    const isKept = (design: typeof DEFAULT_DESIGN) => {
      const whole = { kind: 'ok', design, migratedFrom: undefined, filled: [] }
      expect(parseDesign(formatDesign(design))).toEqual(whole)
    }
    fc.assert(fc.property(arbitraryDesign(), isKept), { numRuns: 50 })
    fc.assert(fc.property(arbitrarySchemaDesign(), isKept), { numRuns: 50 })
  })

  it('never throws, whatever the text is', () => {
    fc.assert(fc.property(fc.string(), (text) => parseDesign(text).kind === 'bad'))
    const marked = fc.json().map((json) => `{"combwright":1,"walls":${json},"cavity":${json}}`)
    fc.assert(fc.property(marked, (text) => ['ok', 'bad'].includes(parseDesign(text).kind)))
  })

  it('refuses a text of 50 MB by its size, without reading it', () => {
    const text = ' '.repeat(50_000_000)
    expect(onlyMessage(text)).toBe(
      'This is 50 MB long, but a Combwright design is never longer than 1 MB. ' +
        'Choose a file that Combwright saved.',
    )
  })

  it('refuses lists nested a hundred thousand deep', () => {
    const deep = `${'['.repeat(100_000)}${']'.repeat(100_000)}`
    expect(onlyMessage(deep)).toMatch(/not a Combwright design/)
    expect(problemsOf(`{"combwright":1,"walls":${deep}}`)).toHaveLength(1)
  })

  it('tells empty, cut and foreign texts apart', () => {
    expect(onlyMessage(' \n')).toMatch(/^This is empty/)
    expect(onlyMessage(formatDesign(DEFAULT_DESIGN).slice(0, -20))).toMatch(/cut short/)
    expect(onlyMessage('{"type":"house"}')).toMatch(/the entry "combwright".* is missing/)
    expect(onlyMessage('[1]')).toMatch(/the entry "combwright".* is missing/)
  })

  it('reads a file that an editor marked with a byte order mark', () => {
    expect(parseDesign(`\uFEFF${formatDesign(DEFAULT_DESIGN)}`).kind).toBe('ok')
  })

  it('says that a later version is newer, before it looks at anything else', () => {
    expect(onlyMessage('{"combwright":7,"roof":{}}')).toBe(
      'This design was made by a newer Combwright (version 7); this one reads up to 2. ' +
        'Open it with the newer Combwright.',
    )
  })

  it.each(['0', '1.5', '"1"', 'null', '-1'])('refuses the version %s', (version) => {
    expect(onlyMessage(`{"combwright":${version}}`)).toMatch(/must be the version/)
  })

  it('refuses two versions that disagree', () => {
    expect(onlyMessage('{"combwright":2,"version":1}')).toMatch(/Make both the same/)
  })

  it('names group, field, value, range and unit of a number out of range', () => {
    expect(problemsOf(wallsWith({ coreMm: 900 }))).toEqual([
      {
        field: 'walls.coreMm',
        message:
          'Walls: Insulation thickness is 900 mm, but must be a number from 10 to 250 mm. ' +
          'Correct "walls.coreMm" in the file.',
      },
    ])
  })

  it('calls text in the place of a number text', () => {
    expect(onlyMessage(wallsWith({ coreMm: '60' }))).toMatch(/is the text "60", but must be a num/)
    expect(onlyMessage(wallsWith({ coreMm: 'NaN' }))).toMatch(/is the text "NaN"/)
    expect(onlyMessage(wallsWith({ coreMm: null }))).toMatch(/is empty, but must be a number/)
  })

  it('refuses part of a frame with one message', () => {
    const cavity = { ...DEFAULT_DESIGN.cavity, frames: 1000.5 }
    expect(onlyMessage(fileWith({ cavity }))).toMatch(
      /^Cavity: Number of frames is 1000.5, but must be a whole number from 4 to 200\./,
    )
  })

  it('lists what a choice, a flag and a material may be', () => {
    const lid = { ...DEFAULT_DESIGN.lid, form: 'round' }
    expect(onlyMessage(fileWith({ lid }))).toMatch(
      /is "round", but must be one of "sloped" \(Single slope\), "flat" \(Flat\)\./,
    )
    const floor = { ...DEFAULT_DESIGN.floor, tray: 'yes' }
    expect(onlyMessage(fileWith({ floor }))).toMatch(/is the text "yes", but must be true or fal/)
    expect(onlyMessage(wallsWith({ insulation: 'ice' }))).toMatch(/of this kind: insulation/)
    expect(onlyMessage(wallsWith({ liningMaterial: 'xps' }))).toMatch(/of this kind: wood or sheet/)
  })

  it('gives the length of a text that is too long instead of the text', () => {
    const title = { ...DEFAULT_DESIGN.title, name: 'n'.repeat(500) }
    expect(onlyMessage(fileWith({ title }))).toMatch(
      /is a text of 500 characters, but must be a text of at most 80 characters/,
    )
  })

  it('counts entrances from one in words', () => {
    const entrances = [DEFAULT_ENTRANCE, { ...DEFAULT_ENTRANCE, heightMm: 99 }]
    const openings = { ...DEFAULT_DESIGN.openings, entrances }
    const [problem] = problemsOf(fileWith({ openings }))
    expect(problem?.field).toBe('openings.entrances.1.heightMm')
    expect(problem?.message).toMatch(/^Entrance 2: Height is 99 mm/)
  })

  it('refuses groups and lists of the wrong kind', () => {
    expect(onlyMessage(fileWith({ lid: [] }))).toMatch(/^Lid is a list of 0, but must be a group/)
    expect(onlyMessage(fileWith({ openings: { entrances: 3 } }))).toMatch(
      /^Entrances is 3, but must be a list of at most 6 entrances/,
    )
    const entrances = Array.from({ length: 7 }, () => DEFAULT_ENTRANCE)
    expect(onlyMessage(fileWith({ openings: { entrances } }))).toMatch(/a list of 7/)
  })

  it('fills missing fields and groups from the defaults and lists them', () => {
    const { coreMm: _, ...walls } = DEFAULT_DESIGN.walls
    const { floor: __, ...groups } = DEFAULT_DESIGN
    const openings = { ...DEFAULT_DESIGN.openings, entrances: [{ centreMm: 300 }] }
    const parsed = parseDesign(
      JSON.stringify({ combwright: DESIGN_VERSION, ...groups, walls, openings }),
    )
    const design = {
      ...DEFAULT_DESIGN,
      openings: { ...openings, entrances: [{ ...DEFAULT_ENTRANCE, centreMm: 300 }] },
    }
    expect(parsed).toMatchObject({ kind: 'ok', design })
    const filled = parsed.kind === 'ok' ? parsed.filled : []
    expect(filled).toEqual(expect.arrayContaining(['walls.coreMm', 'floor']))
    expect(filled).toContain('openings.entrances.0.heightMm')
    // Every entrance field but the one given, one field of the walls, and the floor as a whole.
    expect(filled).toHaveLength(Object.keys(DEFAULT_ENTRANCE).length - 1 + 2)
  })

  it('fills items of the stock, and the lists in them', () => {
    const stock = { lumber: [{ lengthMm: 3000, defects: [{ fromMm: 5 }] }, { material: 'oak' }] }
    const parsed = parseDesign(fileWith({ stock, made: [{ partId: 'leg' }] }))
    expect(parsed).toMatchObject({
      kind: 'ok',
      design: {
        stock: {
          lumber: [
            { ...DEFAULT_LUMBER, lengthMm: 3000, defects: [{ ...DEFAULT_DEFECT, fromMm: 5 }] },
            { ...DEFAULT_LUMBER, material: 'oak' },
          ],
          sheets: [],
          goods: [],
        },
        made: [{ ...DEFAULT_MADE, partId: 'leg' }],
      },
    })
    const filled = parsed.kind === 'ok' ? parsed.filled : []
    expect(filled).toContain('stock.sheets')
    expect(filled).toContain('stock.lumber.0.defects.0.toMm')
    expect(filled).toContain('stock.lumber.1.defects')
  })

  it('names the board and the bad place of a wrong value, and the longest list', () => {
    const board = { ...DEFAULT_LUMBER, defects: [{ fromMm: -1, toMm: 9 }] }
    const lumber = [DEFAULT_LUMBER, board]
    expect(onlyMessage(fileWith({ stock: { lumber, sheets: [], goods: [] } }))).toMatch(
      /^Board 2, bad place 1: Bad from is -1 mm, but must be a number from 0 to 12000 mm/,
    )
    const made = Array.from({ length: 401 }, () => DEFAULT_MADE)
    expect(onlyMessage(fileWith({ made }))).toMatch(
      /Cut parts is a list of 401, but must be a list of at most 400 cut parts/,
    )
    const unknown = { lumber: [{ ...DEFAULT_LUMBER, colour: 'red' }], sheets: [], goods: [] }
    expect(onlyMessage(fileWith({ stock: unknown }))).toMatch(/^Board 1: "colour" is not a field/)
  })

  it('makes the default design of a file with nothing but the marker', () => {
    expect(parseDesign('{"combwright":1}')).toMatchObject({ kind: 'ok', design: DEFAULT_DESIGN })
  })

  it('refuses unknown fields and groups by name', () => {
    const problems = problemsOf(
      fileWith({ walls: { ...DEFAULT_DESIGN.walls, coreMM: 60, colour: 'red' }, roof: {} }),
    )
    expect(problems.map((p) => p.field).toSorted()).toEqual([
      'roof',
      'walls.colour',
      'walls.coreMM',
    ])
    expect(problems.find((p) => p.field === 'walls.coreMM')?.message).toBe(
      'Walls: "coreMM" is not a field that this version of Combwright knows. ' +
        'Check how it is spelt, or take "walls.coreMM" out of the file.',
    )
  })

  it.each(['__proto__', 'constructor', 'prototype'])(
    'refuses the key %s and stays clean',
    (key) => {
      const evil = `"${key}": { "polluted": true }`
      const texts = [
        `{ "combwright": 1, ${evil} }`,
        `{ "combwright": 1, "walls": { ${evil} } }`,
        `{ "combwright": 1, "openings": { ${evil}, "entrances": [{ ${evil} }] } }`,
      ]
      for (const text of texts) expect(problemsOf(text)[0]?.message).toContain(`"${key}"`)
      expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false)
    },
  )

  it('shows at most twenty problems and counts the rest', () => {
    const unknown = Object.fromEntries(Array.from({ length: 500 }, (_, i) => [`x${i}`, 1]))
    const problems = problemsOf(wallsWith(unknown))
    expect(problems).toHaveLength(21)
    expect(problems.at(-1)?.message).toBe('There are 480 more problems of this kind in it.')
  })
})
