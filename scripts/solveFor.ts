/** What a solver said before its time was up, and how the time went. */
export interface Solved<Result> {
  readonly result: Result
  /** The solver came to its own end. */
  readonly isFinished: boolean
  readonly milliseconds: number
  /** Until there was a result at all, and until the best one. */
  readonly firstMs: number
  readonly bestMs: number
  /** The longest that a caller had to wait between two steps. */
  readonly longestStepMs: number
}

/**
 * Runs a solver until it ends or its time is up, whichever comes first. A solver that has said nothing
 * by then is heard out until its first result. The clock counts milliseconds from anywhere.
 */
export const solveFor = <Result>(
  solver: Generator<Result | undefined, Result>,
  limitMs: number,
  clock: () => number = () => performance.now(),
): Solved<Result> => {
  const start = clock()
  let [before, longestStepMs, firstMs, bestMs] = [start, 0, 0, 0]
  let best: Result | undefined
  for (;;) {
    const step = solver.next()
    const now = clock()
    const milliseconds = now - start
    longestStepMs = Math.max(longestStepMs, now - before)
    before = now
    if (step.value !== undefined) {
      if (best === undefined) firstMs = milliseconds
      if (best === undefined || !step.done) bestMs = milliseconds
      best = step.value
    }
    const isLate = step.done === true || milliseconds >= limitMs
    if (isLate && best !== undefined) {
      const isFinished = step.done === true
      return { result: best, isFinished, milliseconds, firstMs, bestMs, longestStepMs }
    }
  }
}

/** Time that this process has worked, ms: on a busy computer nearer to a quiet one's than real time. */
export const workClock = (): number => {
  const { user, system } = process.cpuUsage()
  return (user + system) / 1000
}
