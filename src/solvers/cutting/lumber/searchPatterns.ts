import type { PackingSpace } from './packingSpace.ts'
import { type Bar, sizeOf } from './problem.ts'
import type { FillTask } from './partialFill.ts'

export type SearchAnswer =
  | { readonly kind: 'filled'; readonly bars: readonly Bar[] }
  | { readonly kind: 'impossible' }
  | { readonly kind: 'unknown' }

const STEPS_PER_PAUSE = 3000
const MOST_REMEMBERED = 50_000

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
  let steps = 0
  let sincePause = 0

  const lastKind = (): number => {
    for (let kind = demand.length - 1; kind >= 0; kind--) if ((demand[kind] ?? 0) > 0) return kind
    return -1
  }

  /** All maximal patterns in `room` from `kind` on, fullest of long pieces first. */
  const patternsFrom = (first: number, room: number, slack: number): number[][] => {
    const last = lastKind()
    const shortest = weights[last] ?? 0
    const found: number[][] = []
    const counts = demand.map(() => 0)
    const extend = (kind: number, left: number, spareShortest: number): void => {
      steps++
      if (steps > mostSteps) return
      if (kind > last) {
        if (left <= slack && left < spareShortest) found.push([...counts])
        return
      }
      const weight = weights[kind] ?? 0
      const have = demand[kind] ?? 0
      const fit = weight === 0 ? have : Math.min(have, Math.floor(left / weight))
      for (let copies = fit; copies >= (kind === first ? 1 : 0); copies--) {
        counts[kind] = copies
        // A piece that was left out must not fit into what stays free.
        const spare = copies < have ? Math.min(spareShortest, weight) : spareShortest
        extend(kind + 1, left - copies * weight, spare)
      }
      counts[kind] = 0
    }
    if (shortest > 0 || last >= 0) extend(first, room, Infinity)
    return found.sort((a, b) => sizeOf(weights, b) - sizeOf(weights, a))
  }

  const use = (stock: number, counts: readonly number[], sign: number): void => {
    boards[stock] = (boards[stock] ?? 0) - sign
    counts.forEach((count, kind) => {
      demand[kind] = (demand[kind] ?? 0) - sign * count
    })
  }

  function* place(slack: number): Generator<undefined, boolean> {
    const first = demand.findIndex((count) => count > 0)
    if (first < 0) return true
    if (slack < 0) return false
    const key = `${demand.join()}|${boards.join()}`
    if (hopeless.has(key)) return false
    for (let stock = 0; stock < caps.length; stock++) {
      const cap = caps[stock] ?? 0
      if ((boards[stock] ?? 0) === 0 || cap < (weights[first] ?? 0)) continue
      for (const counts of patternsFrom(first, cap, slack)) {
        if (steps > mostSteps) return false
        if (steps - sincePause > STEPS_PER_PAUSE) {
          sincePause = steps
          yield undefined
        }
        use(stock, counts, 1)
        bars.push({ stock, counts })
        if (yield* place(slack - cap + sizeOf(weights, counts))) return true
        bars.pop()
        use(stock, counts, -1)
      }
    }
    if (steps <= mostSteps && hopeless.size < MOST_REMEMBERED) hopeless.add(key)
    return false
  }

  const isFilled = yield* place(sizeOf(caps, boards) - sizeOf(weights, demand))
  if (isFilled) return { kind: 'filled', bars }
  return steps > mostSteps ? { kind: 'unknown' } : { kind: 'impossible' }
}
