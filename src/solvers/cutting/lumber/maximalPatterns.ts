/** A way to cut one board, and what it leaves over. */
export interface MaximalPattern {
  readonly counts: readonly number[]
  readonly waste: number
}

export interface PatternQuery {
  readonly weights: readonly number[]
  readonly demand: readonly number[]
  readonly cap: number
  readonly mostWaste: number
}

/**
 * All ways to cut a board that hold the first wanted kind and leave no room for any wanted piece more,
 * least waste first. Takes its steps from `meter`; when that runs out the list is not complete.
 */
export const maximalPatterns = (query: PatternQuery, meter: { left: number }): MaximalPattern[] => {
  const { weights, demand, cap, mostWaste } = query
  const kinds = demand.flatMap((count, kind) => (count > 0 ? [kind] : []))
  const rest = restWeights(query, kinds)
  const counts = demand.map(() => 0)
  const found: MaximalPattern[] = []

  /** `spare`: the lightest piece that was left out; it must not fit into what stays free. */
  const extend = (at: number, left: number, spare: number): void => {
    meter.left--
    if (meter.left < 0 || left - (rest[at] ?? 0) > mostWaste) return
    const kind = kinds[at]
    if (kind === undefined) {
      if (left < spare) found.push({ counts: [...counts], waste: left })
      return
    }
    const weight = weights[kind] ?? 0
    const have = demand[kind] ?? 0
    const fewest = at === 0 ? 1 : 0
    for (let copies = mostThatFit(left, weight, have); copies >= fewest; copies--) {
      counts[kind] = copies
      extend(at + 1, left - copies * weight, copies < have ? Math.min(spare, weight) : spare)
    }
    counts[kind] = 0
  }

  extend(0, cap, Infinity)
  return found.sort((a, b) => a.waste - b.waste)
}

const mostThatFit = (room: number, weight: number, have: number): number =>
  weight === 0 ? have : Math.min(have, Math.floor(room / weight))

/** What all wanted pieces from each kind on weigh. */
const restWeights = ({ weights, demand }: PatternQuery, kinds: readonly number[]): number[] => {
  const rest = new Array<number>(kinds.length + 1).fill(0)
  for (let at = kinds.length - 1; at >= 0; at--) {
    const kind = kinds[at] ?? 0
    rest[at] = (rest[at + 1] ?? 0) + (weights[kind] ?? 0) * (demand[kind] ?? 0)
  }
  return rest
}
