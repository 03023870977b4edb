import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { Design } from '../../src/design/schema.ts'
import { setField } from '../../src/design/setField.ts'
import {
  beginGesture,
  commitGesture,
  type DesignState,
  editDesign,
  MAX_STEPS,
  redoStep,
  replaceDesign,
  undoStep,
} from '../../src/store/history.ts'
import { arbitraryDesign } from '../design/arbitraryDesign.ts'

const START: DesignState = {
  design: DEFAULT_DESIGN,
  past: [],
  future: [],
  gestureStart: undefined,
}

const setCore = (mm: number) => (design: Design) => setField(design, 'walls.coreMm', mm).design
const core = (state: DesignState): number => state.design.walls.coreMm

const edited = (state: DesignState, ...sizes: readonly number[]): DesignState =>
  sizes.reduce((before, mm) => editDesign(before, setCore(mm)), state)

/** One press of a random user. */
type Act =
  | { readonly kind: 'edit'; readonly mm: number }
  | { readonly kind: 'begin' | 'commit' | 'undo' | 'redo' }
  | { readonly kind: 'replace'; readonly design: Design }

const arbitraryAct: fc.Arbitrary<Act> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      kind: fc.constant('edit' as const),
      mm: fc.integer({ min: 10, max: 30 }),
    }),
  },
  { weight: 6, arbitrary: fc.record({ kind: fc.constantFrom('begin', 'commit', 'undo', 'redo') }) },
  {
    weight: 1,
    arbitrary: fc.record({ kind: fc.constant('replace' as const), design: arbitraryDesign() }),
  },
)

const act = (state: DesignState, done: Act): DesignState => {
  switch (done.kind) {
    case 'edit':
      return editDesign(state, setCore(done.mm))
    case 'replace':
      return replaceDesign(state, done.design)
    default:
      return { begin: beginGesture, commit: commitGesture, undo: undoStep, redo: redoStep }[
        done.kind
      ](state)
  }
}

const undoAll = (state: DesignState): DesignState =>
  state.past.length === 0 ? state : undoAll(undoStep(state))
const redoAll = (state: DesignState): DesignState =>
  state.future.length === 0 ? state : redoAll(redoStep(state))

describe('editDesign', () => {
  it('makes each edit a step', () => {
    const two = edited(START, 70, 80)
    expect([core(undoStep(two)), core(undoStep(undoStep(two)))]).toEqual([70, 60])
  })

  it('makes no step when nothing changed', () => {
    expect(edited(START, 60)).toBe(START)
  })

  it('drops what was undone', () => {
    const branched = edited(undoStep(edited(START, 70, 80)), 90)
    expect(branched.future).toEqual([])
    expect(core(undoStep(branched))).toBe(70)
  })

  it('remembers two hundred steps', () => {
    // Always another thickness than the step before it.
    const sizes = Array.from({ length: 250 }, (_, i) => 10 + (i % 200))
    const long = edited(START, ...sizes)
    expect(long.past).toHaveLength(MAX_STEPS)
    // 250 steps less 200: the design after the fiftieth edit, i = 49.
    expect(core(undoAll(long))).toBe(59)
  })
})

describe('commitGesture', () => {
  it('makes one step of all edits since the gesture began', () => {
    const dragged = commitGesture(edited(beginGesture(START), 61, 62, 63))
    expect(dragged.past).toEqual([DEFAULT_DESIGN])
    expect(undoStep(dragged).design).toBe(DEFAULT_DESIGN)
  })

  it('makes no step when the drag came back, and keeps what could be redone', () => {
    const undone = undoStep(edited(START, 70))
    const back = commitGesture(edited(beginGesture(undone), 61, 60))
    expect(back).toEqual(undone)
    expect(back.design).toBe(undone.design)
  })

  it('goes on when a key repeats, and needs a beginning', () => {
    const held = edited(beginGesture(edited(beginGesture(START), 61)), 62)
    expect(commitGesture(held).past).toEqual([DEFAULT_DESIGN])
    expect(commitGesture(START)).toBe(START)
  })
})

describe('undoStep', () => {
  it('ends the gesture under way and takes it back whole', () => {
    const undone = undoStep(edited(beginGesture(edited(START, 70)), 71, 72))
    expect(core(undone)).toBe(70)
    expect(undone.gestureStart).toBeUndefined()
    expect(core(redoStep(undone))).toBe(72)
  })

  it('stays at the beginning, and redoStep at the end', () => {
    expect(undoStep(START)).toBe(START)
    expect(redoStep(START)).toBe(START)
  })
})

describe('replaceDesign', () => {
  it('is one step after the gesture under way', () => {
    const other = setCore(99)(DEFAULT_DESIGN)
    const replaced = replaceDesign(edited(beginGesture(START), 61, 62), other)
    expect(replaced.past.map((design) => design.walls.coreMm)).toEqual([60, 62])
    expect(replaced.design).toBe(other)
    expect(replaceDesign(START, DEFAULT_DESIGN)).toBe(START)
  })
})

describe('any course of edits, gestures, undos and redos', () => {
  it('can be undone to the start and redone to the end', () => {
    fc.assert(
      fc.property(fc.array(arbitraryAct, { maxLength: 60 }), (acts) => {
        const end = commitGesture(acts.reduce(act, START))
        const begin = undoAll(end)
        expect(begin.design).toBe(DEFAULT_DESIGN)
        const last = redoAll(end)
        expect(redoAll(begin)).toEqual(last)
        expect(redoAll(begin).design).toBe(last.design)
        // One step back and one forward is nowhere.
        if (end.past.length > 0) expect(redoStep(undoStep(end))).toEqual(end)
      }),
      { numRuns: 60 },
    )
  })

  it('never makes a step between equal designs', () => {
    fc.assert(
      fc.property(fc.array(arbitraryAct, { maxLength: 40 }), (acts) => {
        const { past, design } = commitGesture(acts.reduce(act, START))
        const course = [...past, design].map((step) => JSON.stringify(step))
        for (const [i, step] of course.entries()) expect(step).not.toBe(course[i + 1])
      }),
      { numRuns: 30 },
    )
  })
})
