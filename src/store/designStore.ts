import { create } from 'zustand'
import { DEFAULT_DESIGN } from '../design/defaults.ts'
import type { Design } from '../design/schema.ts'
import {
  beginGesture,
  commitGesture,
  type DesignState,
  editDesign,
  redoStep,
  replaceDesign,
  undoStep,
} from './history.ts'

export interface DesignActions {
  /** One edit: one undo step, or part of the gesture under way. No step if nothing changed. */
  readonly edit: (change: (design: Design) => Design) => void
  /**
   * Starts a drag or a held key: all edits until `commitGesture` are one step. Views call it at the
   * pointer's press or a key's first repeat, and commit at release, cancel and loss of focus.
   */
  readonly beginGesture: () => void
  readonly commitGesture: () => void
  /** One step back; a gesture under way counts as the last step. */
  readonly undo: () => void
  readonly redo: () => void
  /** Replaces the whole design as one step that can be undone. */
  readonly replace: (design: Design) => void
}

export const useDesignStore = create<DesignState & DesignActions>()((set) => ({
  design: DEFAULT_DESIGN,
  past: [],
  future: [],
  gestureStart: undefined,
  edit: (change) => set((state) => editDesign(state, change)),
  beginGesture: () => set(beginGesture),
  commitGesture: () => set(commitGesture),
  undo: () => set(undoStep),
  redo: () => set(redoStep),
  replace: (design) => set((state) => replaceDesign(state, design)),
}))
