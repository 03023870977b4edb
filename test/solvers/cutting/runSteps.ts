/**
 * What a solver has said after so many steps at most, at its end, or once that is enough. Steps are
 * counted and not timed, so that a slow computer sees the same answers. Never fewer than it takes to say
 * something.
 */
export const runSteps = <Result>(
  solver: Generator<Result | undefined, Result>,
  most: number,
  isEnough: (result: Result) => boolean = () => false,
): Result => {
  let best: Result | undefined
  for (let step = 0; step < most || best === undefined; step++) {
    const { value, done } = solver.next()
    if (value === undefined) continue
    best = value
    if (done || isEnough(value)) return value
  }
  return best
}
