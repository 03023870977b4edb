import type { PartClass } from './sheetModel.ts'

/**
 * A rectangle that saw cuts divide, as small as its parts let it be: a part, or pieces side by side.
 * The way they are set side by side changes at every level, so a branch in a branch that stacks along
 * the sheet's length stacks along its width. Where the pieces go in their row does not matter.
 */
export interface SliceNode {
  /** Undefined for a branch. */
  readonly part: PartClass | undefined
  readonly turned: boolean
  /** Extent along the parent's row; for a branch the largest reach of its children. */
  readonly thick: number
  /** Extent across the parent's row; for a branch the sum of its children's thickness. */
  readonly reach: number
  /** Shortest reach first. */
  readonly children: readonly SliceNode[]
  /** Parts in it. */
  readonly leaves: number
  /** Of its parts. */
  readonly area: number
  /** Branches on the longest way down, this one included: the cuts' stages. */
  readonly height: number
}

const NO_CHILDREN: readonly SliceNode[] = []

/** A part in a row that runs along the sheet's length or, if not, along its width. */
export function buildLeaf(part: PartClass, turned: boolean, rowAlongLength: boolean): SliceNode {
  const length = turned ? part.width : part.length
  const width = turned ? part.length : part.width
  return {
    part,
    turned,
    thick: rowAlongLength ? length : width,
    reach: rowAlongLength ? width : length,
    children: NO_CHILDREN,
    leaves: 1,
    area: part.area,
    height: 0,
  }
}

/** Pieces side by side. */
export function buildBranch(children: readonly SliceNode[]): SliceNode {
  let reach = 0
  let thick = 0
  let leaves = 0
  let area = 0
  let height = 0
  let isSorted = true
  for (const child of children) {
    reach += child.thick
    if (child.reach < thick) isSorted = false
    if (child.reach > thick) thick = child.reach
    leaves += child.leaves
    area += child.area
    if (child.height > height) height = child.height
  }
  const sorted = isSorted ? children : [...children].sort((a, b) => a.reach - b.reach)
  return {
    part: undefined,
    turned: false,
    thick,
    reach,
    children: sorted,
    leaves,
    area,
    height: height + 1,
  }
}

/** The same part in a row that runs the other way. */
export function flipLeaf(leaf: SliceNode): SliceNode {
  return { ...leaf, thick: leaf.reach, reach: leaf.thick }
}

/** The branch with another child in place of some; the rest of the tree is shared. */
export function swapChildren(
  branch: SliceNode,
  isReplaced: (index: number) => boolean,
  added: SliceNode,
): SliceNode {
  const children: SliceNode[] = []
  for (const [index, child] of branch.children.entries()) {
    if (!isReplaced(index)) children.push(child)
  }
  children.push(added)
  return buildBranch(children)
}

/**
 * The tree without the parts that `isDropped` names by their place in order; each dropped part is handed
 * to `onDrop`. Rows of one piece dissolve into the row above.
 */
export function pruneTree(
  root: SliceNode,
  isDropped: (leaf: number) => boolean,
  onDrop: (part: PartClass) => void,
): SliceNode | undefined {
  let leaf = 0
  const prune = (node: SliceNode): SliceNode | undefined => {
    if (node.part) {
      if (!isDropped(leaf++)) return node
      onDrop(node.part)
      return undefined
    }
    const kept: SliceNode[] = []
    let isChanged = false
    for (const child of node.children) {
      const rest = prune(child)
      if (rest !== child) isChanged = true
      if (rest) dissolveInto(kept, rest)
    }
    if (!isChanged) return node
    return kept.length > 0 ? buildBranch(kept) : undefined
  }
  return prune(root)
}

function dissolveInto(row: SliceNode[], node: SliceNode): void {
  const [only] = node.children
  if (node.part || node.children.length > 1 || !only) row.push(node)
  // A branch in the only place of a branch runs the same way as the row that takes it over.
  else if (only.part) row.push(flipLeaf(only))
  else row.push(...only.children)
}

/** All parts in a tree, in order. */
export function listParts(node: SliceNode): readonly PartClass[] {
  return node.part ? [node.part] : node.children.flatMap(listParts)
}
