import type { ViewState } from '../store/viewStore.ts'

/** What is marked on the model, and how. */
export interface Marks {
  readonly selected: ReadonlySet<string>
  readonly hovered: string | undefined
  /** New in a step of assembly; undefined while none is shown. */
  readonly fresh: ReadonlySet<string> | undefined
}

export const UNMARKED: Marks = { selected: new Set(), hovered: undefined, fresh: undefined }

export const marksOf = (
  view: Pick<ViewState, 'selectedPartIds' | 'hoveredPartId' | 'assembly'>,
): Marks => ({
  selected: new Set(view.selectedPartIds),
  hovered: view.hoveredPartId,
  fresh: view.assembly && new Set(view.assembly.fresh),
})

const TINT = { selected: 0.5, hovered: 0.16, fresh: 0.7, selectedInStep: 1, hoveredFresh: 0.82 }
/** Below 0 a part pales towards paper, so that what is new stands out from wood of its own colour. */
const PALE = -0.72
const PALE_HOVERED = -0.45

/** Share of amber over a part's own colour, 0 to 1; below 0 the share of paper. */
export const partTint = (id: string, { selected, hovered, fresh }: Marks): number => {
  const isHovered = id === hovered
  if (fresh === undefined) {
    return selected.has(id) ? TINT.selected : isHovered ? TINT.hovered : 0
  }
  if (selected.has(id)) return TINT.selectedInStep
  if (fresh.has(id)) return isHovered ? TINT.hoveredFresh : TINT.fresh
  return isHovered ? PALE_HOVERED : PALE
}
