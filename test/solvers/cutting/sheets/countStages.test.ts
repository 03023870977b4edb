import { describe, expect, it } from 'vitest'
import { countStages } from '../../../../src/solvers/cutting/sheets/countStages.ts'
import type { CutNode } from '../../../../src/solvers/cutting/sheets/sheetJob.ts'

const rect = { xMm: 0, yMm: 0, lengthMm: 1, widthMm: 1 }
const offcut: CutNode = { kind: 'offcut', rect }
const piece: CutNode = { kind: 'part', rect, piece: { ...rect, part: 0, turned: false } }

function cut(along: 'length' | 'width', first: CutNode, second: CutNode, isCarry = false): CutNode {
  return { kind: 'cut', rect, along, atMm: 0, isCarry, first, second }
}

describe('countStages', () => {
  it('is 0 for an uncut sheet and 1 for one cut', () => {
    expect(countStages(piece)).toBe(0)
    expect(countStages(cut('length', piece, offcut))).toBe(1)
  })

  it('counts changes of direction, not cuts', () => {
    expect(countStages(cut('length', piece, cut('length', piece, offcut)))).toBe(1)
    const strip = cut('width', piece, piece)
    expect(countStages(cut('length', strip, strip))).toBe(2)
  })

  it('does not count a last cut that trims a part out of its strip', () => {
    const trimmed = cut('length', piece, offcut)
    expect(countStages(cut('width', trimmed, offcut))).toBe(1)
    expect(countStages(cut('length', cut('width', trimmed, piece), offcut))).toBe(2)
  })

  it('begins anew in each carried piece', () => {
    const strip = cut('length', cut('width', piece, piece), offcut)
    expect(countStages(cut('width', cut('length', strip, strip, true), strip, true))).toBe(2)
  })
})
