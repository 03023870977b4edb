import { describe, expect, it } from 'vitest'
import { readCutFile } from '../../scripts/cutFile.ts'

const BOARDS = {
  stocks: [{ lengthMm: 2400, price: 7.5 }],
  kerfMm: 3,
  trimMm: 10,
  parts: [{ lengthMm: 609.6, count: 4 }],
}
const SHEETS = {
  stocks: [{ lengthMm: 2440, widthMm: 1220, price: 48.9 }],
  kerfMm: 3,
  trimMm: 5,
  stages: 2,
  parts: [{ lengthMm: 600, widthMm: 400, count: 4, mayTurn: true }],
}

const readOf = (file: unknown) =>
  readCutFile(typeof file === 'string' ? file : JSON.stringify(file))

const messagesOf = (file: unknown): readonly string[] => {
  const read = readOf(file)
  return read.kind === 'bad' ? read.messages : []
}

const jobsOf = (file: unknown) => {
  const read = readOf(file)
  if (read.kind === 'bad') throw new Error(read.messages.join('\n'))
  return { ...read.file, warnings: read.warnings }
}

const withPart = (change: object) => ({
  lumber: { ...BOARDS, parts: [{ ...BOARDS.parts[0], ...change }] },
})

const withStock = (change: object) => ({
  lumber: { ...BOARDS, stocks: [{ ...BOARDS.stocks[0], ...change }] },
})

const withSheets = (change: object) => ({ sheets: { ...SHEETS, ...change } })

describe('readCutFile', () => {
  it('reads both kinds at once, and names by their place what has no id', () => {
    const { lumber, sheets, warnings } = jobsOf({ lumber: BOARDS, sheets: SHEETS })
    expect(warnings).toEqual([])
    expect(lumber).toEqual({
      ...BOARDS,
      stocks: [{ id: 'stocks[0]', lengthMm: 2400, price: 7.5 }],
      parts: [{ id: 'parts[0]', lengthMm: 609.6, count: 4 }],
    })
    expect(sheets).toEqual({
      ...SHEETS,
      stocks: [{ id: 'stocks[0]', lengthMm: 2440, widthMm: 1220, price: 48.9 }],
      parts: [{ id: 'parts[0]', lengthMm: 600, widthMm: 400, count: 4, mayTurn: true }],
    })
    expect(jobsOf(withPart({ id: 'rail' })).lumber?.parts[0]?.id).toBe('rail')
    expect(jobsOf({ lumber: BOARDS }).sheets).toBeUndefined()
  })

  it('fills in what may be left out', () => {
    const { trimMm: _, ...noTrim } = BOARDS
    expect(jobsOf({ lumber: noTrim }).lumber?.trimMm).toBe(0)
    expect(jobsOf(withPart({ count: undefined })).lumber?.parts[0]?.count).toBe(1)
    const { stages: __, ...anyStages } = SHEETS
    expect(jobsOf({ sheets: anyStages }).sheets?.stages).toBe(3)
    const part = { lengthMm: 600, widthMm: 400 }
    const [read] = jobsOf(withSheets({ parts: [part] })).sheets?.parts ?? []
    expect(read).toMatchObject({ count: 1, mayTurn: false })
  })

  it('takes stock without a count, or with the count null, for unlimited', () => {
    expect(jobsOf(withStock({ count: null })).lumber?.stocks[0]).not.toHaveProperty('count')
    expect(jobsOf(withStock({ count: 0 })).lumber?.stocks[0]?.count).toBe(0)
  })

  it.each([
    [2, 2],
    [3, 3],
    [4, 4],
    [5, 'any'],
    [99, 'any'],
    ['any', 'any'],
  ])('reads stages %j as %j', (given, stages) => {
    expect(jobsOf(withSheets({ stages: given })).sheets?.stages).toBe(stages)
  })

  it('takes kerfs of 0 and 10, prices with decimals and of 0, and parts that nobody wants', () => {
    expect(messagesOf({ lumber: { ...BOARDS, kerfMm: 0 } })).toEqual([])
    expect(messagesOf({ lumber: { ...BOARDS, kerfMm: 10 } })).toEqual([])
    expect(messagesOf(withStock({ price: 0 }))).toEqual([])
    expect(messagesOf(withStock({ price: 3.333 }))).toEqual([])
    expect(messagesOf(withPart({ count: 0 }))).toEqual([])
    expect(messagesOf({ lumber: { ...BOARDS, parts: [], stocks: [] } })).toEqual([])
  })

  it('warns of what it does not know, and reads the rest', () => {
    const file = { comment: 'two rails', lumber: { ...withPart({ lenght: 4 }).lumber, kerf: 3 } }
    expect(jobsOf(file).warnings).toEqual([
      'comment is not known and is left alone.',
      'lumber.parts[0].lenght is not known and is left alone.',
      'lumber.kerf is not known and is left alone.',
    ])
    expect(
      jobsOf('{"lumber": {"stocks":[],"kerfMm":1,"parts":[],"__proto__":1}}').warnings,
    ).toEqual(['lumber.__proto__ is not known and is left alone.'])
  })

  it.each([
    ['', 'The file is not JSON, or it is cut short.'],
    ['{"lumber": {', 'The file is not JSON, or it is cut short.'],
    ['{"lumber": {"kerfMm": NaN}}', 'The file is not JSON, or it is cut short.'],
    ['null', 'The file is empty, but must be an object with lumber, sheets or both.'],
    ['[]', 'The file is a list of 0, but must be an object with lumber, sheets or both.'],
    ['{}', 'The file has neither lumber nor sheets, so there is nothing to cut.'],
    ['{"lumber": 3}', 'lumber is 3, but must be an object with stocks, kerfMm and parts.'],
  ])('refuses %j', (text, message) => {
    expect(messagesOf(text)).toEqual([message])
  })

  it.each([
    [
      withPart({ lengthMm: '24 in' }),
      'lumber.parts[0].lengthMm is "24 in", but must be a length above 0, in mm.',
    ],
    [
      withPart({ lengthMm: 'NaN' }),
      'lumber.parts[0].lengthMm is "NaN", but must be a length above 0, in mm.',
    ],
    [
      withPart({ lengthMm: 0 }),
      'lumber.parts[0].lengthMm is 0, but must be a length above 0, in mm.',
    ],
    [
      withPart({ count: 2.5 }),
      'lumber.parts[0].count is 2.5, but must be a whole number from 0 up.',
    ],
    [withPart({ count: -1 }), 'lumber.parts[0].count is -1, but must be a whole number from 0 up.'],
    [withStock({ price: -3 }), 'lumber.stocks[0].price is -3, but must be a price from 0 up.'],
    [
      withStock({ price: undefined }),
      'lumber.stocks[0].price is missing, but must be a price from 0 up.',
    ],
    [
      { lumber: { ...BOARDS, kerfMm: undefined } },
      'lumber.kerfMm is missing, but must be the width of the saw cut from 0 up, in mm.',
    ],
    [
      { lumber: { ...BOARDS, parts: 'all' } },
      'lumber.parts is "all", but must be a list of what is to be cut.',
    ],
    [
      { lumber: { ...BOARDS, parts: [600] } },
      'lumber.parts[0] is 600, but must be a part in { }, with its size and count.',
    ],
    [withSheets({ stages: 1 }), 'sheets.stages is 1, but must be 2, 3, 4 or "any".'],
    [withSheets({ stages: 2.5 }), 'sheets.stages is 2.5, but must be 2, 3, 4 or "any".'],
    [
      withSheets({ parts: [{ ...SHEETS.parts[0], mayTurn: 'yes' }] }),
      'sheets.parts[0].mayTurn is "yes", but must be true or false.',
    ],
    [
      withSheets({ stocks: [{ lengthMm: 2440, price: 5 }] }),
      'sheets.stocks[0].widthMm is missing, but must be a width above 0, in mm.',
    ],
  ])('names the place and what it must be: %j', (file, message) => {
    expect(messagesOf(file)).toEqual([message])
  })

  it('names 20 faults and counts the rest', () => {
    const parts = Array.from({ length: 30 }, () => ({ lengthMm: -1 }))
    const messages = messagesOf({ lumber: { ...BOARDS, parts } })
    expect(messages).toHaveLength(21)
    expect(messages.at(-1)).toBe('And 10 more of this kind.')
  })
})
