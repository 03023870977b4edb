import { quietly, type Search } from './climbLadder.ts'
import { type AlikeBars, groupBars } from './describePlan.ts'
import { type Bar, offcutOf, type Problem } from './problem.ts'
import { type Alike, recutPatterns } from './recutPatterns.ts'

/** Steps of sharing pieces out, in all and for one set of patterns. */
const MOST_STEPS = 400_000
const STEPS_PER_SET = 400
const STEPS_PER_PAUSE = 10_000

/**
 * Takes sets of two, three and four patterns and cuts their boards in one pattern fewer, as long as
 * that works (the combinations of Foerster & Waescher 2000, with a search in place of their formulas).
 * The board with the longest offcut stays as it is. Yields true when there are fewer patterns.
 */
export function* fewerPatterns(search: Search): Generator<boolean, void> {
  const { problem, progress } = search
  const meter = { left: MOST_STEPS }
  for (;;) {
    const kept = longestOffcutAt(problem, progress.bars)
    const groups = groupBars(progress.bars.filter((_, index) => index !== kept))
    const better = yield* quietly(mergeSome(problem, groups, meter))
    if (better === undefined) return
    progress.bars = [...better, ...progress.bars.slice(kept, kept + 1)]
    yield true
  }
}

/** Index of the board that leaves the longest offcut. */
const longestOffcutAt = (problem: Problem, bars: readonly Bar[]): number => {
  const offcuts = bars.map((bar) => offcutOf(problem, bar))
  return offcuts.indexOf(Math.max(...offcuts))
}

/** The first set of patterns that one fewer can replace, replaced. */
function* mergeSome(
  problem: Problem,
  groups: readonly AlikeBars[],
  meter: { left: number },
): Generator<undefined, Bar[] | undefined> {
  let pauseAt = meter.left - STEPS_PER_PAUSE
  for (const size of [2, 3, 4]) {
    // Patterns for few boards first: they are the easiest to do without.
    for (const picked of subsets(groups.length, size)) {
      const set = picked.flatMap((at) => groups[groups.length - 1 - at] ?? [])
      const fewer = mergeSet(problem, set, meter)
      if (fewer !== undefined) {
        const rest = groups.filter((group) => !set.includes(group))
        return [...rest, ...fewer].flatMap(({ stock, counts, times }) =>
          new Array<Bar>(times).fill({ stock, counts }),
        )
      }
      if (meter.left < 0) return undefined
      if (meter.left > pauseAt) continue
      pauseAt = meter.left - STEPS_PER_PAUSE
      yield undefined
    }
  }
  return undefined
}

/** Cuts the boards of a set of patterns in one pattern fewer, if that can be found. */
const mergeSet = (
  { weights, caps, demand }: Problem,
  set: readonly AlikeBars[],
  meter: { left: number },
): AlikeBars[] | undefined => {
  const needed = demand.map((_, kind) =>
    set.reduce((sum, { counts, times }) => sum + times * (counts[kind] ?? 0), 0),
  )
  const boards = new Map<number, number>()
  for (const { stock, times } of set) boards.set(stock, (boards.get(stock) ?? 0) + times)
  for (const split of splits([...boards], set.length - 1)) {
    const groups: Alike[] = split.map(([stock, times]) => ({ times, cap: caps[stock] ?? 0 }))
    const own = { left: STEPS_PER_SET }
    const patterns = recutPatterns({ weights, demand: needed, groups }, own)
    meter.left -= STEPS_PER_SET - own.left + 5
    if (patterns !== undefined) {
      return split.map(([stock, times], at) => ({ stock, times, counts: patterns[at] ?? [] }))
    }
    if (meter.left < 0) return undefined
  }
  return undefined
}

type StockTimes = readonly [stock: number, times: number]

/** All ways to divide boards of some stocks into `parts` groups of one stock each. */
function* splits(boards: readonly StockTimes[], parts: number): Generator<StockTimes[], void> {
  const [first, ...others] = boards
  if (first === undefined) {
    if (parts === 0) yield []
    return
  }
  const [stock, times] = first
  for (let own = 1; own <= parts - others.length; own++) {
    for (const shares of partitions(times, own, times)) {
      for (const rest of splits(others, parts - own)) {
        yield [...shares.map((share) => [stock, share] as const), ...rest]
      }
    }
  }
}

/** All ways to write a number as so many parts from 1 to `most`, largest first. */
function* partitions(total: number, parts: number, most: number): Generator<number[], void> {
  if (parts === 0) {
    if (total === 0) yield []
    return
  }
  const top = Math.min(most, total - parts + 1)
  for (let share = top; share * parts >= total; share--) {
    for (const rest of partitions(total - share, parts - 1, share)) yield [share, ...rest]
  }
}

/** All sets of `size` numbers below `all`, small numbers first. */
function* subsets(all: number, size: number): Generator<number[], void> {
  if (size === 0) {
    yield []
    return
  }
  for (let last = size - 1; last < all; last++) {
    for (const rest of subsets(last, size - 1)) yield [...rest, last]
  }
}
