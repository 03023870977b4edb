import { describe, expect, it } from 'vitest'
import { cutOrder } from '../../../src/sheets/shop/cutOrder.ts'
import type { CutNode, SheetRect } from '../../../src/solvers/cutting/sheets/sheetJob.ts'

const rect = (xMm: number, yMm: number, lengthMm: number, widthMm: number): SheetRect => ({
  xMm,
  yMm,
  lengthMm,
  widthMm,
})
const left = (at: SheetRect): CutNode => ({ kind: 'offcut', rect: at })

/**
 * A sheet of 1000 × 600 with 4 mm kerf, cut across at 596 for the car, then its left piece along at 300
 * and its right one across at 796.
 */
const ROOT: CutNode = {
  kind: 'cut',
  rect: rect(0, 0, 1000, 600),
  along: 'width',
  atMm: 596,
  isCarry: true,
  first: {
    kind: 'cut',
    rect: rect(0, 0, 596, 600),
    along: 'length',
    atMm: 300,
    isCarry: false,
    first: left(rect(0, 0, 596, 300)),
    second: left(rect(0, 304, 596, 296)),
  },
  second: {
    kind: 'cut',
    rect: rect(600, 0, 400, 600),
    along: 'width',
    atMm: 796,
    isCarry: false,
    first: left(rect(600, 0, 196, 600)),
    second: left(rect(800, 0, 200, 600)),
  },
}

describe('cutOrder', () => {
  it('lists each cut before those of the pieces that it makes, the whole sheet first', () => {
    const cuts = cutOrder(ROOT)
    expect(cuts.map((c) => [c.number, c.along, c.atMm, c.isCarry])).toEqual([
      [1, 'width', 596, true],
      [2, 'length', 300, false],
      [3, 'width', 796, false],
    ])
  })

  it('measures from the edge of the piece that is divided, where a fence or guide stands', () => {
    expect(cutOrder(ROOT).map((c) => c.fromEdgeMm)).toEqual([596, 300, 196])
  })

  it('says how far each cut runs', () => {
    expect(cutOrder(ROOT).map((c) => [c.fromMm, c.toMm])).toEqual([
      [0, 600],
      [0, 596],
      [0, 600],
    ])
  })
})
