import { type Bar, type Problem, sizeOf } from './problem.ts'

/** Moves each board's pieces, fullest first, to the cheapest and then shortest board that takes them. */
export const downgrade = (problem: Problem, bars: readonly Bar[]): Bar[] => {
  const left = [...problem.limits]
  const cheapest = problem.caps
    .map((_, stock) => stock)
    .sort(
      (a, b) =>
        (problem.costs[a] ?? 0) - (problem.costs[b] ?? 0) ||
        (problem.caps[a] ?? 0) - (problem.caps[b] ?? 0),
    )
  const sized = bars
    .map((bar) => ({ bar, size: sizeOf(problem.weights, bar.counts) }))
    .sort((a, b) => b.size - a.size)
  const moved: Bar[] = []
  for (const { bar, size } of sized) {
    const stock = cheapest.find((at) => (left[at] ?? 0) > 0 && (problem.caps[at] ?? 0) >= size)
    // Counted boards ran out, which can't happen to all of them: the plan as it was is kept.
    if (stock === undefined) return [...bars]
    left[stock] = (left[stock] ?? 0) - 1
    moved.push({ stock, counts: bar.counts })
  }
  return moved
}
