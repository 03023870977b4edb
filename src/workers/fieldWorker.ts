import { solveCells, solveVertices } from '../solvers/conduction/solveWorld.ts'
import { createAnswerHeat } from './answerHeat.ts'
import type { FieldReply, FieldRequest, FieldRole } from './fieldMessages.ts'
import { createFieldServer } from './fieldServer.ts'
import { askCellsAt, serveCells } from './serveCells.ts'
import { createSolveBoth } from './solveBoth.ts'
import { createTurn } from './takeTurns.ts'
import { transferables } from './transferables.ts'

// The page's and the worker's globals share one type here; this is the worker's.
const scope = self as unknown as DedicatedWorkerGlobalScope

const tell = (reply: FieldReply): void => {
  // The grid is kept here to start from, so a copy of it is handed over.
  const copy = structuredClone(reply)
  scope.postMessage(copy, [...transferables(copy)])
}

scope.onmessage = ({ data: { role, line } }: MessageEvent<FieldRole>) => {
  const turn = createTurn()
  if (role === 'cells') return serveCells(line, solveCells, turn)
  const solve = createSolveBoth(solveVertices, askCellsAt(line), turn)
  const receive = createFieldServer(createAnswerHeat(solve), tell)
  scope.onmessage = ({ data }: MessageEvent<FieldRequest>) => receive(data)
}
