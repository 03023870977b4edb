import type { SchemeAnswer } from '../solvers/conduction/fieldAnswer.ts'
import type { FieldQuestion } from '../solvers/conduction/solveWorld.ts'
import { WorldError } from '../solvers/conduction/worldError.ts'
import type { CellReply, CellRequest } from './fieldMessages.ts'
import { runInTurns, type Turn } from './takeTurns.ts'
import { transferables } from './transferables.ts'

/** The part of a `MessagePort` that is used. */
export interface Line {
  readonly postMessage: (message: unknown, transfer: Transferable[]) => void
  onmessage: ((event: MessageEvent) => void) | null
}

export type SolveCells = (question: FieldQuestion) => Generator<unknown, SchemeAnswer>

/** Answers questions about the cell scheme at the end of a line; a new one replaces the old. */
export const serveCells = (line: Line, solveCells: SolveCells, turn: Turn): void => {
  let current = new AbortController()
  const tell = (reply: CellReply): void => line.postMessage(reply, [...transferables(reply)])

  const solve = async (serial: number, question: FieldQuestion, signal: AbortSignal) => {
    try {
      tell({ kind: 'solved', serial, answer: await runInTurns(solveCells(question), signal, turn) })
    } catch (error) {
      if (signal.aborted) return
      const message = error instanceof Error ? error.message : String(error)
      tell({ kind: 'failed', serial, message, isWorld: error instanceof WorldError })
    }
  }
  line.onmessage = ({ data }: MessageEvent<CellRequest>) => {
    current.abort()
    current = new AbortController()
    if (data.kind === 'solve') void solve(data.serial, data.question, current.signal)
  }
}

export type AskCells = (question: FieldQuestion, signal: AbortSignal) => Promise<SchemeAnswer>

/** Asks at the other end of the line. An aborted signal cancels there and rejects here. */
export const askCellsAt = (line: Line): AskCells => {
  let serial = 0
  const send = (request: CellRequest): void => line.postMessage(request, [])
  return (question, signal) =>
    new Promise((resolve, reject) => {
      signal.throwIfAborted()
      serial += 1
      const own = serial
      const onAbort = () => {
        send({ kind: 'cancel' })
        reject(signal.reason)
      }
      signal.addEventListener('abort', onAbort, { once: true })
      line.onmessage = ({ data }: MessageEvent<CellReply>) => {
        if (data.serial !== own) return
        signal.removeEventListener('abort', onAbort)
        if (data.kind === 'solved') resolve(data.answer)
        else reject(new (data.isWorld ? WorldError : Error)(data.message))
      }
      send({ kind: 'solve', serial: own, question })
    })
}
