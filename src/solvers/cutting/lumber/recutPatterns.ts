/** So many boards of one capacity that are all to be cut alike. */
export interface Alike {
  readonly times: number
  readonly cap: number
}

export interface RecutTask {
  readonly weights: readonly number[]
  /** Pieces by kind that the boards have to give, no more and no fewer. */
  readonly demand: readonly number[]
  readonly groups: readonly Alike[]
}

/**
 * Finds for each group of boards one pattern so that all of them together give exactly the demand, or
 * nothing within `meter.left` steps. Kind by kind, longest first, in all ways to share it out.
 */
export const recutPatterns = (
  { weights, demand, groups }: RecutTask,
  meter: { left: number },
): number[][] | undefined => {
  const kinds = demand.flatMap((count, kind) => (count > 0 ? [kind] : []))
  const room = groups.map(({ cap }) => cap)
  const patterns = groups.map(() => demand.map(() => 0))

  /** From the most to the fewest pieces of a kind that the boards of a group may get of `left`. */
  const range = (kind: number, group: number, left: number): readonly [number, number] => {
    const { times = 1 } = groups[group] ?? {}
    const weight = weights[kind] ?? 0
    const wanted = Math.floor(left / times)
    const fit = weight === 0 ? wanted : Math.floor((room[group] ?? 0) / weight)
    if (group < groups.length - 1) return [Math.min(wanted, fit), 0]
    // The last group has to take all that is left.
    return left % times === 0 && wanted <= fit ? [wanted, wanted] : [-1, 0]
  }

  /** Shares what is left of a kind out to the groups from `group` on, then goes on to the next kind. */
  const share = (at: number, group: number, left: number): boolean => {
    meter.left--
    if (meter.left < 0) return false
    const kind = kinds[at]
    if (kind === undefined) return true
    const pattern = patterns[group]
    if (pattern === undefined) return share(at + 1, 0, demand[kinds[at + 1] ?? 0] ?? 0)
    const [most, fewest] = range(kind, group, left)
    const weight = weights[kind] ?? 0
    const times = groups[group]?.times ?? 1
    const before = room[group] ?? 0
    for (let copies = most; copies >= fewest; copies--) {
      pattern[kind] = copies
      room[group] = before - copies * weight
      if (share(at, group + 1, left - copies * times)) return true
    }
    pattern[kind] = 0
    room[group] = before
    return false
  }

  return share(0, 0, demand[kinds[0] ?? 0] ?? 0) ? patterns : undefined
}
