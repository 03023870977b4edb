import type { SchemeAnswer } from '../solvers/conduction/fieldAnswer.ts'
import { joinSchemes } from '../solvers/conduction/joinSchemes.ts'
import type { FieldQuestion } from '../solvers/conduction/solveWorld.ts'
import type { SolveField } from './rememberAnswers.ts'
import type { AskCells } from './serveCells.ts'
import { runInTurns, type Turn } from './takeTurns.ts'

/** Solves the vertex scheme here while the cell scheme is solved elsewhere. */
export const createSolveBoth =
  (
    solveVertices: (question: FieldQuestion) => Generator<unknown, SchemeAnswer>,
    askCells: AskCells,
    turn: Turn,
  ): SolveField =>
  async (question, signal) => {
    const [cell, vertex] = await Promise.all([
      askCells(question, signal),
      runInTurns(solveVertices(question), signal, turn),
    ])
    return joinSchemes(cell, vertex)
  }
