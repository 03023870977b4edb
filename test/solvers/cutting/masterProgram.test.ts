import { describe, expect, it } from 'vitest'
import { invertMatrix } from '../../../src/solvers/cutting/invertMatrix.ts'
import { createMaster, type Master } from '../../../src/solvers/cutting/masterProgram.ts'

const finish = (master: Master): void => {
  while (!master.solve());
}

describe('createMaster', () => {
  it('covers the demand at least cost and says what a piece is worth', () => {
    // One of each kind in a pattern at 3, two of the first at 4: 4 of the first and 2 of the second.
    const master = createMaster({
      demand: [4, 2],
      penalties: [100, 100],
      boards: [Infinity],
      costs: [1],
    })
    master.addColumn({ bin: 0, kinds: [0, 1], copies: [1, 1] })
    master.addColumn({ bin: 0, kinds: [0], copies: [2] })
    finish(master)
    expect(master.uncovered()).toBeCloseTo(0, 9)
    const uses = master.values().map(([, value]) => value)
    expect(uses.reduce((sum, value) => sum + value, 0)).toBeCloseTo(3, 9)
    // A piece of the first is half a board, and so is one of the second.
    expect(Array.from(master.pieceDuals())).toEqual([0.5, 0.5])
  })

  it('leaves out what counted boards do not hold, and says what one more is worth', () => {
    const master = createMaster({ demand: [6], penalties: [10], boards: [2], costs: [1] })
    master.addColumn({ bin: 0, kinds: [0], copies: [2] })
    finish(master)
    expect(master.uncovered()).toBeCloseTo(2, 9)
    // One board more places two pieces: 20 saved for 1.
    expect(Array.from(master.boardDuals())[0]).toBeCloseTo(19, 9)
  })

  it('goes on from where it was when a column comes in', () => {
    const master = createMaster({
      demand: [3, 0],
      penalties: [9, 9],
      boards: [Infinity],
      costs: [2],
    })
    finish(master)
    expect(master.uncovered()).toBeCloseTo(3, 9)
    master.addColumn({ bin: 0, kinds: [0], copies: [3] })
    finish(master)
    expect(master.uncovered()).toBeCloseTo(0, 9)
    expect(master.values()).toEqual([[{ bin: 0, kinds: [0], copies: [3] }, 1]])
  })
})

describe('invertMatrix', () => {
  it('gives the inverse, whatever the order of rows', () => {
    // [0 2; 4 1] has the inverse [-1/8 1/4; 1/2 0].
    const inverse = invertMatrix(Float64Array.from([0, 2, 4, 1]), 2)
    expect(Array.from(inverse ?? [])).toEqual([-0.125, 0.25, 0.5, 0])
  })

  it('says so when there is none', () => {
    expect(invertMatrix(Float64Array.from([1, 2, 2, 4]), 2)).toBeUndefined()
  })
})
