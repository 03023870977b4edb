import { maximalPatterns } from './maximalPatterns.ts'
import type { PackingSpace } from './packingSpace.ts'
import type { FillTask } from './partialFill.ts'
import { type Bar, sizeOf } from './problem.ts'

export type SearchAnswer =
  | { readonly kind: 'filled'; readonly bars: readonly Bar[] }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'unknown' }

const STEPS_PER_PAUSE = 6000
/** Lists of patterns that take longer than this are not worth waiting for. */
const STEPS_PER_LIST = 30_000
const MOST_REMEMBERED = 20_000

/**
 * Looks through all ways to cut the boards, as long as steps remain. The longest piece left has to lie
 * on some board; that board can be taken to be so full that nothing left fits it, because any other
 * piece could move onto it; and no more may be wasted than there is to waste. States that led nowhere
 * are remembered.
 */
export function* searchPatterns(
  { weights, caps }: PackingSpace,
  task: FillTask,
  mostSteps: number,
): Generator<undefined, SearchAnswer> {
  const boards = [...task.boards]
  const demand = [...task.demand]
  const bars: Bar[] = []
  const hopeless = new Set<string>()
  const meter = { left: mostSteps }
  let pauseAt = mostSteps - STEPS_PER_PAUSE

  const use = ({ stock, counts }: Bar, sign: number): void => {
    boards[stock] = (boards[stock] ?? 0) - sign
    counts.forEach((count, kind) => {
      demand[kind] = (demand[kind] ?? 0) - sign * count
    })
  }

  /** Patterns for a board of one stock; runs the meter out when they can't all be listed. */
  const patternsOn = (stock: number, mostWaste: number) => {
    const own = { left: Math.min(meter.left, STEPS_PER_LIST) }
    const before = own.left
    const query = { weights, demand, cap: caps[stock] ?? 0, mostWaste }
    const patterns = maximalPatterns(query, own)
    meter.left = own.left < 0 ? -1 : meter.left - (before - own.left)
    return meter.left < 0 ? [] : patterns
  }

  function* placeOn(stock: number, slack: number): Generator<undefined, boolean> {
    for (const { counts, waste } of patternsOn(stock, slack)) {
      if (meter.left < pauseAt) {
        pauseAt = meter.left - STEPS_PER_PAUSE
        yield undefined
      }
      const bar = { stock, counts }
      use(bar, 1)
      bars.push(bar)
      if (yield* place(slack - waste)) return true
      bars.pop()
      use(bar, -1)
      if (meter.left < 0) return false
    }
    return false
  }

  function* place(slack: number): Generator<undefined, boolean> {
    if (slack < 0) return false
    if (demand.every((count) => count === 0)) return true
    const key = `${demand.join()}|${boards.join()}`
    if (hopeless.has(key)) return false
    for (let stock = 0; stock < caps.length; stock++) {
      if ((boards[stock] ?? 0) > 0 && (yield* placeOn(stock, slack))) return true
      if (meter.left < 0) return false
    }
    if (hopeless.size < MOST_REMEMBERED) hopeless.add(key)
    return false
  }

  const isFilled = yield* place(sizeOf(caps, boards) - sizeOf(weights, demand))
  if (isFilled) return { kind: 'filled', bars }
  return { kind: meter.left < 0 ? 'unknown' : 'impossible' }
}
