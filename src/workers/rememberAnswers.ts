import type { FieldAnswer } from '../solvers/conduction/fieldAnswer.ts'
import type { FieldQuestion } from '../solvers/conduction/solveWorld.ts'

export type Solve<Answer> = (question: FieldQuestion, signal: AbortSignal) => Promise<Answer>

export type SolveField = Solve<FieldAnswer>

/** Remembers the last few answers, so that undo, redo and edits that no heat feels cost nothing. */
export const rememberAnswers = <Answer>(solve: Solve<Answer>, mostKept: number): Solve<Answer> => {
  const kept = new Map<string, Answer>()
  return async (question, signal) => {
    const { world, mesh, tolerance } = question
    const key = JSON.stringify([world, mesh, tolerance])
    const answer = kept.get(key) ?? (await solve(question, signal))
    // The one used last stands last; the first to go is the one not used for longest.
    kept.delete(key)
    kept.set(key, answer)
    for (const oldest of kept.keys()) {
      if (kept.size <= mostKept) break
      kept.delete(oldest)
    }
    return answer
  }
}
