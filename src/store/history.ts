import { isSameDesign } from '../design/isSameDesign.ts'
import type { Design } from '../design/schema.ts'

/** The document with its history. Nothing derived is kept here. */
export interface DesignState {
  readonly design: Design
  /** Designs to go back to, the newest last. */
  readonly past: readonly Design[]
  /** Designs to go forward to, the nearest first. */
  readonly future: readonly Design[]
  /** The design when the gesture under way began; undefined between gestures. */
  readonly gestureStart: Design | undefined
}

/** Undo goes back this many steps; designs share what did not change, so a step is small. */
export const MAX_STEPS = 200

/**
 * One edit: a step of its own, or a part of the gesture under way. No step when `change` gives the
 * design back unchanged.
 */
export function editDesign(state: DesignState, change: (design: Design) => Design): DesignState {
  const design = change(state.design)
  if (design === state.design) return state
  return state.gestureStart === undefined ? stepTo(state, design) : { ...state, design }
}

/** Starts a gesture; one that is under way already goes on. */
export function beginGesture(state: DesignState): DesignState {
  return state.gestureStart === undefined ? { ...state, gestureStart: state.design } : state
}

/** Ends the gesture: one step, or none when it ended where it began. */
export function commitGesture(state: DesignState): DesignState {
  const { gestureStart, design } = state
  if (gestureStart === undefined) return state
  const before = { ...state, design: gestureStart, gestureStart: undefined }
  // A slider dragged away and back makes a new but equal design.
  return isSameDesign(gestureStart, design) ? before : stepTo(before, design)
}

/** Back by one step; a gesture under way ends first, so that it is the step gone back. */
export function undoStep(state: DesignState): DesignState {
  const settled = commitGesture(state)
  const design = settled.past.at(-1)
  if (design === undefined) return settled
  const future = [settled.design, ...settled.future]
  return { ...settled, design, past: settled.past.slice(0, -1), future }
}

/** Forward by one step that was undone; a gesture under way ends first. */
export function redoStep(state: DesignState): DesignState {
  const settled = commitGesture(state)
  const [design, ...future] = settled.future
  if (design === undefined) return settled
  return { ...settled, design, past: [...settled.past, settled.design], future }
}

/** Another design in place of the present one, as one step after the gesture under way. */
export function replaceDesign(state: DesignState, design: Design): DesignState {
  return editDesign(commitGesture(state), () => design)
}

function stepTo(state: DesignState, design: Design): DesignState {
  const past = [...state.past, state.design].slice(-MAX_STEPS)
  return { ...state, design, past, future: [] }
}
