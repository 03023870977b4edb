import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { setField } from '../../src/design/setField.ts'
import { useDesignStore } from '../../src/store/designStore.ts'

const store = useDesignStore
const initial = store.getInitialState()
afterEach(() => store.setState(initial, true))

const setCore = (mm: number) =>
  store.getState().edit((design) => setField(design, 'walls.coreMm', mm).design)

describe('useDesignStore', () => {
  it('edits, undoes and redoes', () => {
    setCore(70)
    expect(store.getState().design.walls.coreMm).toBe(70)
    store.getState().undo()
    expect(store.getState().design).toBe(DEFAULT_DESIGN)
    store.getState().redo()
    expect(store.getState().design.walls.coreMm).toBe(70)
  })

  it('makes one step of a gesture, and one of a replacement', () => {
    store.getState().beginGesture()
    for (const mm of [61, 62, 63]) setCore(mm)
    store.getState().commitGesture()
    store.getState().replace(DEFAULT_DESIGN)
    expect(store.getState().past.map((design) => design.walls.coreMm)).toEqual([60, 63])
  })

  it('wakes nobody when nothing changed', () => {
    let wakings = 0
    const unsubscribe = store.subscribe(() => {
      wakings += 1
    })
    setCore(60)
    store.getState().undo()
    store.getState().commitGesture()
    unsubscribe()
    expect(wakings).toBe(0)
  })
})
