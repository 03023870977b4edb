import { create } from 'zustand'

/** The sheets that lie on the bench. */
export type BenchSheet = 'boards' | 'sheets' | 'set-ups' | 'fasteners' | 'shopping' | 'labels'

/** What of the workshop is open: never saved with the design and never undone. */
export interface BenchState {
  readonly isOpen: boolean
  /** The sheet that lies on top, also while the bench is put away. */
  readonly sheet: BenchSheet
  /** The step of assembly that is shown, counted from 0; undefined while nothing is put together. */
  readonly step: number | undefined
  /** The cut list row whose parts are being measured, by its label. */
  readonly measured: string | undefined
}

interface BenchActions {
  readonly open: (sheet: BenchSheet) => void
  readonly close: () => void
  readonly goTo: (step: number | undefined) => void
  /** Opens the labels at a row to enter what was made of it; undefined ends it. */
  readonly measure: (label: string | undefined) => void
}

export const useBench = create<BenchState & BenchActions>()((set) => ({
  isOpen: false,
  sheet: 'boards',
  step: undefined,
  measured: undefined,
  open: (sheet) => set({ isOpen: true, sheet }),
  close: () => set({ isOpen: false, measured: undefined }),
  // The bench lies over the hive, and a step is looked at there.
  goTo: (step) => set(step === undefined ? { step } : { step, isOpen: false }),
  measure: (label) =>
    set(
      label === undefined
        ? { measured: undefined }
        : { isOpen: true, sheet: 'labels', measured: label },
    ),
}))
