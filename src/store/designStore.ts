import { create } from 'zustand'
import { DEFAULT_DESIGN } from '../design/defaults.ts'
import type { Design } from '../design/schema.ts'

/** The document with its history. Nothing derived is kept here. */
export interface DesignState {
  readonly design: Design
  readonly past: readonly Design[]
  readonly future: readonly Design[]
  /** The design when the gesture under way began; undefined between gestures. */
  readonly gestureStart: Design | undefined
}

export interface DesignActions {
  /** One edit: one undo step, or part of the gesture under way. */
  readonly edit: (change: (design: Design) => Design) => void
  /** Starts a drag or a held key: all edits until `commitGesture` are one step. */
  readonly beginGesture: () => void
  readonly commitGesture: () => void
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
  edit: (change) => set((s) => ({ design: change(s.design) })),
  beginGesture: () => {},
  commitGesture: () => {},
  undo: () => {},
  redo: () => {},
  replace: (design) => set({ design }),
}))
