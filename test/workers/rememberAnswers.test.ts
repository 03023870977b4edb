import { describe, expect, it } from 'vitest'
import type { FieldGrid } from '../../src/solvers/conduction/fieldGrid.ts'
import type { FieldQuestion } from '../../src/solvers/conduction/solveWorld.ts'
import { WorldError } from '../../src/solvers/conduction/worldError.ts'
import { rememberAnswers } from '../../src/workers/rememberAnswers.ts'

const question = (leastCellM: number): FieldQuestion => ({
  world: { blocks: [], environments: [], background: 0, beyond: [0, 0, 0, 0, 0, 0] },
  mesh: { leastCellM, growth: 1, greatestCellM: leastCellM, cellsPerGap: 1, mergeM: 0 },
  tolerance: 0.01,
})

const NO_PLANES = new Float64Array()
const GRID: FieldGrid = {
  xM: NO_PLANES,
  yM: NO_PLANES,
  zM: NO_PLANES,
  temperatureC: new Float32Array(),
}

const never = new AbortController().signal

describe('rememberAnswers', () => {
  it('solves the same world, mesh and tolerance once, whatever it starts from', async () => {
    let solved = 0
    const solve = rememberAnswers(async () => ++solved, 9)
    const first = await solve(question(0.1), never)
    expect(await solve({ ...question(0.1), start: GRID }, never)).toBe(first)
    expect(await solve(question(0.2), never)).not.toBe(first)
    expect(await solve({ ...question(0.1), tolerance: 0.1 }, never)).not.toBe(first)
    expect(solved).toBe(3)
  })

  it('forgets the one not used for longest', async () => {
    let solved = 0
    const solve = rememberAnswers(async () => ++solved, 2)
    await solve(question(0.1), never)
    await solve(question(0.2), never)
    await solve(question(0.1), never)
    await solve(question(0.3), never)
    expect(solved).toBe(3)
    await solve(question(0.1), never)
    expect(solved).toBe(3)
    await solve(question(0.2), never)
    expect(solved).toBe(4)
  })

  it('keeps nothing of a question that failed', async () => {
    let tries = 0
    const solve = rememberAnswers(async () => {
      tries += 1
      if (tries === 1) throw new WorldError('once')
      return tries
    }, 9)
    await expect(solve(question(0.1), never)).rejects.toThrow('once')
    expect(await solve(question(0.1), never)).toBe(2)
  })
})
