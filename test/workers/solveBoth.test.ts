import { afterEach, describe, expect, it } from 'vitest'
import {
  type FieldQuestion,
  type SolveSteps,
  solveCells,
  solveVertices,
  solveWorld,
} from '../../src/solvers/conduction/solveWorld.ts'
import { WorldError } from '../../src/solvers/conduction/worldError.ts'
import { askCellsAt, serveCells } from '../../src/workers/serveCells.ts'
import { createSolveBoth } from '../../src/workers/solveBoth.ts'
import { createTurn } from '../../src/workers/takeTurns.ts'

const RESISTANCES = [0.1, 0.1, 0.1, 0.1, 0.1, 0.1] as const

/** A hollow cube of wood, 1 m outside, with walls of 100 mm. */
const cube = (cellM: number, conductivityWPerMK = 0.12): FieldQuestion => ({
  world: {
    blocks: [
      { kind: 'solid', minM: [0, 0, 0], maxM: [1, 1, 1], conductivityWPerMK },
      { kind: 'air', minM: [0.1, 0.1, 0.1], maxM: [0.9, 0.9, 0.9], environment: 1 },
    ],
    environments: [
      { temperatureC: 0, surfaceResistanceM2KPerW: RESISTANCES },
      { temperatureC: 1, surfaceResistanceM2KPerW: RESISTANCES },
    ],
    background: 0,
    beyond: [0, 0, 0, 0, 0, 0],
  },
  mesh: { leastCellM: cellM, growth: 1, greatestCellM: cellM, cellsPerGap: 1, mergeM: 0 },
  tolerance: 1e-6,
})

const lines: MessagePort[] = []
afterEach(() => {
  for (const line of lines.splice(0)) line.close()
})

/** Both ends of the line in this thread; every step of the work is counted and followed by a turn. */
const setUp = (onTurn: (turns: number) => void = () => {}) => {
  const { port1, port2 } = new MessageChannel()
  lines.push(port1)
  const steps = { cell: 0, vertex: 0 }
  let turns = 0
  const turn = createTurn()
  const counted = (scheme: 'cell' | 'vertex', work: SolveSteps): SolveSteps => {
    function* count(): SolveSteps {
      for (;;) {
        const { done, value } = work.next()
        if (done) return value
        steps[scheme] += 1
        yield value
      }
    }
    return count()
  }
  const countedTurn = () => {
    turns += 1
    onTurn(turns)
    return turn()
  }
  serveCells(port2, (question) => counted('cell', solveCells(question)), countedTurn)
  const solve = createSolveBoth(
    (question) => counted('vertex', solveVertices(question)),
    askCellsAt(port1),
    countedTurn,
  )
  return { solve, stepsOf: () => ({ ...steps }) }
}

const stepsFor = async (question: FieldQuestion) => {
  const { solve, stepsOf } = setUp()
  await solve(question, never)
  return stepsOf()
}

const never = new AbortController().signal

describe('createSolveBoth', () => {
  it('answers what the solver answers in one thread', async () => {
    const { solve } = setUp()
    expect(await solve(cube(0.1), never)).toEqual(solveWorld(cube(0.1)))
  })

  it('answers one question after another, and fails in words for a world without an answer', async () => {
    const { solve } = setUp()
    await expect(solve(cube(0.1, 0), never)).rejects.toThrow(WorldError)
    const { conductanceWPerK } = await solve(cube(0.2), never)
    expect(conductanceWPerK).toBe(solveWorld(cube(0.2)).conductanceWPerK)
  })

  it('stops both schemes at their next turn after an abort', async () => {
    const control = new AbortController()
    const { solve, stepsOf } = setUp((turns) => turns === 2 && control.abort())
    await expect(solve(cube(0.025), control.signal)).rejects.toThrow(/abort/i)
    const { cell, vertex } = stepsOf()
    // A question asked later comes after whatever the old one would still have done.
    await solve(cube(0.5), never)
    const without = await stepsFor(cube(0.5))
    expect(stepsOf().cell - without.cell - cell).toBeLessThan(2)
    expect(stepsOf().vertex - without.vertex - vertex).toBeLessThan(2)
    const whole = await stepsFor(cube(0.025))
    expect(cell + vertex).toBeLessThan(whole.cell + whole.vertex)
  })
})
