import { measureRoom, type PackedSheet } from './packedSheet.ts'
import type { PartClass } from './sheetModel.ts'
import type { SliceNode } from './sliceTree.ts'

/**
 * Where a part can go in a tree of cuts:
 * `start` in an empty cell; `join` a row; `wrap`: beside one part of a row, across the row; `span`: beside
 * the first few pieces of a row, across it; `lift`: beside all that is in the cell.
 */
export interface Place {
  readonly kind: 'start' | 'join' | 'wrap' | 'span' | 'lift'
  readonly sheet: number
  readonly cell: number
  /** From the root to the branch, by child. */
  readonly path: readonly number[]
  /** The child that is wrapped, or the number of children spanned. */
  readonly child: number
  readonly turned: boolean
  /** For `start`: the row runs along the sheet's length. */
  readonly alongLength: boolean
}

/** The search's own memory, made once and used again. */
export interface PlaceSearch {
  readonly stages: number
  readonly random: () => number
  /** The share of places that are overlooked on purpose, so that a search does not repeat itself. */
  blink: number
  /** Nodes looked at so far: the measure of effort. */
  effort: number
  best: Place | undefined
  bestScore: number
  sheet: number
  cell: number
  part: PartClass | undefined
  along: number
  cross: number
  alongLength: boolean
  readonly branches: SliceNode[]
  readonly steps: number[]
}

export function createPlaceSearch(stages: number, random: () => number): PlaceSearch {
  return {
    stages,
    random,
    blink: 0,
    effort: 0,
    best: undefined,
    bestScore: Number.NEGATIVE_INFINITY,
    sheet: 0,
    cell: 0,
    part: undefined,
    along: 0,
    cross: 0,
    alongLength: true,
    branches: [],
    steps: [],
  }
}

/**
 * The place in these sheets that keeps what is left over in the fewest, largest pieces: the sum of the
 * left-over rectangles' areas to the power 1.5 falls least. Undefined where nothing fits.
 * After Gardeyn & Wauters 2022, who value left-over pieces by a power of their area; here a row still
 * grows while its sheet has room, so nothing is lost to where the first cut was laid.
 */
export function findPlace(
  search: PlaceSearch,
  sheets: readonly PackedSheet[],
  part: PartClass,
): Place | undefined {
  search.best = undefined
  search.bestScore = Number.NEGATIVE_INFINITY
  search.part = part
  for (let at = 0; at < sheets.length; at++) {
    const sheet = sheets[at]
    if (!sheet || sheet.type.area - sheet.usedArea < part.area) continue
    search.sheet = at
    searchSheet(search, sheet, part)
  }
  return search.best
}

function searchSheet(search: PlaceSearch, sheet: PackedSheet, part: PartClass): void {
  let hasTriedEmpty = false
  for (let at = 0; at < sheet.cells.length; at++) {
    const cell = sheet.cells[at]
    if (!cell) continue
    search.cell = at
    const room = measureRoom(sheet, at)
    if (!cell.root) {
      // Empty cells of a sheet are alike.
      if (!hasTriedEmpty) {
        tryStart(search, part, room.length, room.width, true)
        tryStart(search, part, room.width, room.length, false)
      }
      hasTriedEmpty = true
      continue
    }
    search.alongLength = cell.alongLength
    search.along = cell.alongLength ? room.length : room.width
    search.cross = cell.alongLength ? room.width : room.length
    tryLift(search, part, cell.root)
    visit(search, cell.root, 0, search.along, search.cross)
  }
}

/** All places in a branch that may reach `along` in its own row and `cross` across it. */
function visit(
  search: PlaceSearch,
  branch: SliceNode,
  level: number,
  along: number,
  cross: number,
): void {
  const part = search.part
  if (!part) return
  search.effort += branch.children.length + 1
  search.branches[level] = branch
  const slack = along - branch.reach
  const rowAlongLength = ((level & 1) === 0) === search.alongLength
  for (let turn = 0; turn < (part.mayTurn ? 2 : 1); turn++) {
    const isThickLength = rowAlongLength === (turn === 0)
    const thick = isThickLength ? part.length : part.width
    const reach = isThickLength ? part.width : part.length
    if (reach > cross) continue
    if (thick <= slack) tryJoin(search, branch, level, thick, reach, turn)
    if (level + 1 < search.stages)
      tryWraps(search, branch, level, [thick, reach, slack, cross], turn)
    if (level + 2 < search.stages && branch.children.length > 2) {
      trySpan(search, branch, level, [thick, reach, slack, cross], turn)
    }
  }
  const least = Math.min(part.length, part.width)
  for (let at = 0; at < branch.children.length; at++) {
    const child = branch.children[at]
    if (!child || child.part || child.thick + slack < least) continue
    search.steps[level] = at
    visit(search, child, level + 1, cross, child.thick + slack)
  }
}

function tryStart(
  search: PlaceSearch,
  part: PartClass,
  along: number,
  cross: number,
  alongLength: boolean,
): void {
  for (let turn = 0; turn < (part.mayTurn ? 2 : 1); turn++) {
    const isThickLength = alongLength === (turn === 0)
    const thick = isThickLength ? part.length : part.width
    const reach = isThickLength ? part.width : part.length
    if (thick > along || reach > cross) continue
    search.alongLength = alongLength
    const score =
      worth((along - thick) * cross) + worth(thick * (cross - reach)) - worth(along * cross)
    propose(search, score, 'start', 0, -1, turn)
  }
}

function tryLift(search: PlaceSearch, part: PartClass, root: SliceNode): void {
  if (root.height + 1 > search.stages) return
  const { along, cross } = search
  // The new row runs across the old one: the sheet's `cross` is its length.
  for (let turn = 0; turn < (part.mayTurn ? 2 : 1); turn++) {
    const isThickLength = !search.alongLength === (turn === 0)
    const thick = isThickLength ? part.length : part.width
    const reach = isThickLength ? part.width : part.length
    const left = cross - root.thick - thick
    if (left < 0 || reach > along) continue
    let score =
      worth(left * along) +
      worth(thick * (along - reach)) +
      worth(root.thick * (along - root.reach)) -
      worth((along - root.reach) * cross)
    for (const child of root.children) {
      score +=
        worth(child.thick * (root.thick - child.reach)) - worth(child.thick * (cross - child.reach))
    }
    propose(search, score, 'lift', 0, -1, turn)
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
  propose(search, score, 'join', level, -1, turn)
}

type Fit = readonly [thick: number, reach: number, slack: number, cross: number]

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
    propose(search, score, 'wrap', level, at, turn)
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
  propose(search, score, 'span', level, size, turn)
}

/** What the branches above gain or lose when the branch at this level becomes so large. */
function worthAbove(search: PlaceSearch, level: number, thick: number, reach: number): number {
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
function worthOfGrowth(branch: SliceNode, from: number, skip: number, newCross: number): number {
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

function propose(
  search: PlaceSearch,
  score: number,
  kind: Place['kind'],
  level: number,
  child: number,
  turn: number,
): void {
  if (score <= search.bestScore) return
  if (search.blink > 0 && search.random() < search.blink) return
  search.bestScore = score
  search.best = {
    kind,
    sheet: search.sheet,
    cell: search.cell,
    path: level > 0 ? search.steps.slice(0, level) : NO_STEPS,
    child,
    turned: turn === 1,
    alongLength: search.alongLength,
  }
}

const NO_STEPS: readonly number[] = []

/** The value of a left-over rectangle: two halves are worth less than the whole. */
function worth(area: number): number {
  return area * Math.sqrt(area)
}
