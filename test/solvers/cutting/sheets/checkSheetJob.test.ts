import { describe, expect, it } from 'vitest'
import { checkSheetJob } from '../../../../src/solvers/cutting/sheets/checkSheetJob.ts'
import type { SheetJob } from '../../../../src/solvers/cutting/sheets/sheetJob.ts'

const STOCK = { id: 'ply', lengthMm: 2440, widthMm: 1220, price: 48.9 }
const PART = { id: 'B', lengthMm: 600, widthMm: 400, count: 2, mayTurn: false }
const JOB: SheetJob = { stocks: [STOCK], kerfMm: 3, trimMm: 0, stages: 3, parts: [PART] }

describe('checkSheetJob', () => {
  it('lets a sound job pass', () => {
    expect(checkSheetJob(JOB)).toBeUndefined()
  })

  it.each<[string, SheetJob]>([
    ['a kerf that is no number', { ...JOB, kerfMm: Number.NaN }],
    ['a negative kerf', { ...JOB, kerfMm: -1 }],
    ['a negative trim', { ...JOB, trimMm: -1 }],
    ['a trim of half the sheet', { ...JOB, trimMm: 610 }],
    ['a negative price', { ...JOB, stocks: [{ ...STOCK, price: -1 }] }],
    ['a price that is no number', { ...JOB, stocks: [{ ...STOCK, price: Number.NaN }] }],
    ['an endless sheet', { ...JOB, stocks: [{ ...STOCK, lengthMm: Number.POSITIVE_INFINITY }] }],
    ['half a sheet on hand', { ...JOB, stocks: [{ ...STOCK, count: 0.5 }] }],
    ['a negative count of sheets', { ...JOB, stocks: [{ ...STOCK, count: -1 }] }],
    ['a part without a width', { ...JOB, parts: [{ ...PART, widthMm: 0 }] }],
    ['a negative count of parts', { ...JOB, parts: [{ ...PART, count: -2 }] }],
    ['nothing that can be carried', { ...JOB, carry: { lengthMm: 1200, widthMm: 0 } }],
  ])('refuses %s', (_, job) => {
    expect(checkSheetJob(job)).toMatchObject({ kind: 'refused', reason: 'bad-input' })
  })

  it('refuses parts without any sheet, but not no parts', () => {
    expect(checkSheetJob({ ...JOB, stocks: [] })).toMatchObject({ reason: 'no-stock', parts: [0] })
    const none = { ...JOB, stocks: [{ ...STOCK, count: 0 }] }
    expect(checkSheetJob(none)).toMatchObject({ reason: 'no-stock' })
    expect(checkSheetJob({ ...JOB, stocks: [], parts: [] })).toBeUndefined()
  })

  it('names all parts that are too large, with sizes, and which only the grain keeps out', () => {
    const parts = [
      PART,
      { ...PART, id: 'C', lengthMm: 1300, widthMm: 1230, mayTurn: true },
      { ...PART, id: 'D', lengthMm: 500, widthMm: 2000 },
    ]
    const refusal = checkSheetJob({ ...JOB, parts })
    expect(refusal).toMatchObject({ reason: 'too-large', parts: [1, 2] })
    expect(refusal?.message).toContain('C (1300 × 1230 mm)')
    expect(refusal?.message).toContain('D (500 × 2000 mm, would fit if it might be turned)')
  })

  it('refuses a part that cannot be carried', () => {
    const carry = { lengthMm: 550, widthMm: 1200 }
    expect(checkSheetJob({ ...JOB, carry })).toBeUndefined()
    const tight = { lengthMm: 550, widthMm: 590 }
    expect(checkSheetJob({ ...JOB, carry: tight })).toMatchObject({
      reason: 'too-large',
      parts: [0],
    })
  })
})
