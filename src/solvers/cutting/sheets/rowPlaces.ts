import { worth, worthAbove, worthOfGrowth } from './leftoverWorth.ts'
import { type PlaceSearch, proposePlace } from './placeSearch.ts'
import type { SliceNode } from './sliceTree.ts'

/** A part's extents along and across a row, what is free along the row, and how far it may reach across. */
export type Fit = readonly [thick: number, reach: number, slack: number, cross: number]

/** Proposes all places for a part in one row, for one way round. */
export function tryRow(
  search: PlaceSearch,
  branch: SliceNode,
  level: number,
  fit: Fit,
  turn: number,
): void {
  const [thick, reach, slack] = fit
  if (thick <= slack) tryJoin(search, branch, level, thick, reach, turn)
  if (level + 1 < search.stages) tryWraps(search, branch, level, fit, turn)
  if (level + 2 < search.stages && branch.children.length > 2) {
    trySpan(search, branch, level, fit, turn)
  }
}

function tryJoin(
  search: PlaceSearch,
  branch: SliceNode,
  level: number,
  thick: number,
  reach: number,
  turn: number,
): void {
  const cross = level === 0 ? search.cross : branch.thick
  const newCross = Math.max(reach, cross)
  let score = worth(thick * (newCross - reach))
  if (newCross > cross) score += worthOfGrowth(branch, 0, -1, newCross)
  score += worthAbove(search, level, newCross, branch.reach + thick)
  proposePlace(search, score, 'join', level, -1, turn)
}

function tryWraps(
  search: PlaceSearch,
  branch: SliceNode,
  level: number,
  [thick, reach, slack, cross]: Fit,
  turn: number,
): void {
  const oldCross = level === 0 ? search.cross : branch.thick
  for (let at = 0; at < branch.children.length; at++) {
    const child = branch.children[at]
    // Children come with the shortest reach first.
    if (!child || child.reach + reach > cross) return
    if (!child.part || thick > child.thick + slack) continue
    const newThick = thick > child.thick ? thick : child.thick
    const newReach = child.reach + reach
    const newCross = Math.max(newReach, oldCross)
    let score =
      worth(child.reach * (newThick - child.thick)) +
      worth(reach * (newThick - thick)) +
      worth(newThick * (newCross - newReach)) -
      worth(child.thick * (oldCross - child.reach))
    if (newCross > oldCross) score += worthOfGrowth(branch, 0, at, newCross)
    score += worthAbove(search, level, newCross, branch.reach - child.thick + newThick)
    proposePlace(search, score, 'wrap', level, at, turn)
  }
}

function trySpan(
  search: PlaceSearch,
  branch: SliceNode,
  level: number,
  [thick, reach, slack, cross]: Fit,
  turn: number,
): void {
  let spanned = 0
  let height = 0
  for (let size = 1; size < branch.children.length; size++) {
    const last = branch.children[size - 1]
    if (!last || last.reach + reach > cross) return
    spanned += last.thick
    if (last.height > height) height = last.height
    if (level + 3 + height > search.stages) return
    if (size < 2 || spanned + slack < thick) continue
    scoreSpan(search, branch, level, [thick, reach, spanned, size], turn)
    // More pieces would only stand further from the part.
    if (spanned >= thick) return
  }
}

function scoreSpan(
  search: PlaceSearch,
  branch: SliceNode,
  level: number,
  [thick, reach, spanned, size]: readonly [number, number, number, number],
  turn: number,
): void {
  const oldCross = level === 0 ? search.cross : branch.thick
  const groupReach = branch.children[size - 1]?.reach ?? 0
  const newThick = thick > spanned ? thick : spanned
  const newReach = groupReach + reach
  const newCross = Math.max(newReach, oldCross)
  let score =
    worth(groupReach * (newThick - spanned)) +
    worth(reach * (newThick - thick)) +
    worth(newThick * (newCross - newReach))
  for (let at = 0; at < size; at++) {
    const child = branch.children[at]
    if (!child) continue
    score += worth(child.thick * (groupReach - child.reach))
    score -= worth(child.thick * (oldCross - child.reach))
  }
  if (newCross > oldCross) score += worthOfGrowth(branch, size, -1, newCross)
  score += worthAbove(search, level, newCross, branch.reach - spanned + newThick)
  proposePlace(search, score, 'span', level, size, turn)
}
