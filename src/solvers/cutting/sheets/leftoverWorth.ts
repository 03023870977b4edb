import type { PlaceSearch } from './placeSearch.ts'
import type { SliceNode } from './sliceTree.ts'

/** The value of a left-over rectangle: two halves are worth less than the whole. */
export function worth(area: number): number {
  return area * Math.sqrt(area)
}

/** What the branches above gain or lose when the branch at this level becomes so large. */
export function worthAbove(
  search: PlaceSearch,
  level: number,
  thick: number,
  reach: number,
): number {
  let newThick = thick
  let newReach = reach
  let score = 0
  for (let at = level; at > 0; at--) {
    const child = search.branches[at]
    const branch = search.branches[at - 1]
    if (!child || !branch) break
    if (newThick === child.thick && newReach === child.reach) return score
    const cross = at === 1 ? search.cross : branch.thick
    const newCross = Math.max(newReach, cross)
    score += worth(newThick * (newCross - newReach)) - worth(child.thick * (cross - child.reach))
    if (newCross > cross) score += worthOfGrowth(branch, 0, search.steps[at - 1] ?? -1, newCross)
    newReach = branch.reach - child.thick + newThick
    newThick = newCross
  }
  const root = search.branches[0]
  if (!root || newReach === root.reach) return score
  const { along, cross } = search
  return score + worth((along - newReach) * cross) - worth((along - root.reach) * cross)
}

/** What the gaps beside a branch's other children gain when it grows to `newCross`. */
export function worthOfGrowth(
  branch: SliceNode,
  from: number,
  skip: number,
  newCross: number,
): number {
  let score = 0
  for (let at = from; at < branch.children.length; at++) {
    const child = branch.children[at]
    if (!child || at === skip) continue
    score +=
      worth(child.thick * (newCross - child.reach)) -
      worth(child.thick * (branch.thick - child.reach))
  }
  return score
}
