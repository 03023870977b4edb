import { create } from 'zustand'
import type { HeatScale } from '../reports/heat/field/heatRange.ts'
import { METRIC, type UnitPreferences } from '../units/preferences.ts'

export type Stage =
  | 'frame'
  | 'cavity'
  | 'walls'
  | 'lid'
  | 'floor'
  | 'openings'
  | 'stand'
  | 'site'
  | 'colony'
  | 'shop'

export type CameraPreset = 'three-quarter' | 'front' | 'side' | 'top' | 'inside' | 'underneath'

export type SectionAxis = 'none' | 'x' | 'z'

/** What the person looks at, never saved with the design and never undone. */
export interface ViewState {
  readonly stage: Stage
  /** 0 closed up, 1 groups apart, 2 every layer apart. */
  readonly explode: number
  /** 0 closed, 1 open to the design's angle. */
  readonly lidOpen: number
  readonly floorOpen: number
  /** Index of the frame that is lifted out, and how far, 0 to 1. */
  readonly liftedFrame: number
  readonly frameLift: number
  readonly sectionAxis: SectionAxis
  /** Place of the section plane along its axis, 0 to 1 of the hive. */
  readonly sectionAt: number
  readonly selectedPartIds: readonly string[]
  readonly hoveredPartId: string | undefined
  /** The serial grows with each request, so that asking for the same view twice works. */
  readonly camera: { readonly preset: CameraPreset; readonly serial: number }
  readonly showDimensions: boolean
  readonly units: UnitPreferences
  readonly quality: 'full' | 'low'
  /** Surfaces and section show their temperature instead of their material. */
  readonly showHeat: boolean
  /** What the colours of `showHeat` are spread over; undefined, which is whole, until they are shown. */
  readonly heatScale: HeatScale | undefined
  /** What the pointer is over while `showHeat`; undefined over nothing. */
  readonly heatProbe: HeatProbe | undefined
  /** Ids of the parts that stand in a step of assembly, and of those that are new; undefined when off. */
  readonly assembly: AssemblyView | undefined
}

/** One step of assembly: nothing else is shown, and the hive is neither opened nor taken apart. */
export interface AssemblyView {
  readonly solid: readonly string[]
  readonly fresh: readonly string[]
}

/** A temperature read off the model. */
export interface HeatProbe {
  /** Share of the way from the air outside (0) to the air inside (1). */
  readonly share: number
  readonly partId: string
}

interface ViewActions {
  readonly set: (change: Partial<ViewState>) => void
  readonly look: (preset: CameraPreset) => void
  /** Shows a step of assembly from where it is seen best. */
  readonly showStep: (step: AssemblyView & { readonly view: CameraPreset }) => void
  readonly select: (partIds: readonly string[]) => void
  /** Shows temperatures or materials. The first time, the scale is the one that fits what is in sight. */
  readonly toggleHeat: () => void
}

const INITIAL_VIEW: ViewState = {
  stage: 'frame',
  explode: 0,
  lidOpen: 0,
  floorOpen: 0,
  liftedFrame: 0,
  frameLift: 0,
  sectionAxis: 'none',
  // Off the middle, where a stud would hide the insulation.
  sectionAt: 0.44,
  selectedPartIds: [],
  hoveredPartId: undefined,
  camera: { preset: 'three-quarter', serial: 0 },
  showDimensions: false,
  units: METRIC,
  quality: 'full',
  showHeat: false,
  heatScale: undefined,
  heatProbe: undefined,
  assembly: undefined,
}

export const useViewStore = create<ViewState & ViewActions>()((set) => ({
  ...INITIAL_VIEW,
  set: (change) => set(change),
  look: (preset) => set((s) => ({ camera: { preset, serial: s.camera.serial + 1 } })),
  showStep: ({ solid, fresh, view }) =>
    set((s) => ({
      assembly: { solid, fresh },
      camera: { preset: view, serial: s.camera.serial + 1 },
    })),
  select: (partIds) => set({ selectedPartIds: partIds }),
  toggleHeat: () =>
    set((s) => ({
      showHeat: !s.showHeat,
      heatProbe: undefined,
      heatScale: s.heatScale ?? (isClosedUp(s) ? 'outside' : 'whole'),
    })),
}))

/** Nothing of the inside is in sight. */
export const isClosedUp = (view: ViewState): boolean =>
  view.sectionAxis === 'none' &&
  Math.max(view.explode, view.lidOpen, view.floorOpen, view.frameLift) < 0.01
