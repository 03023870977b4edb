/**
 * What a solver has said after so many steps at most, or at its end. Steps are counted and not timed, so
 * that a slow computer sees the same answers. Never fewer than it takes to say something.
 */
export const runSteps = <Result>(
  solver: Generator<Result | undefined, Result>,
  most: number,
): Result => {
  let best: Result | undefined
  for (let step = 0; step < most || best === undefined; step++) {
    const { value, done } = solver.next()
    if (value !== undefined) best = value
    if (done && value !== undefined) return value
  }
  return best
}
