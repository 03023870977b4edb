import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { Design } from '../../src/design/schema.ts'
import { setField } from '../../src/design/setField.ts'
import { attachAutosave } from '../../src/store/attachAutosave.ts'
import type { SavedDesign } from '../../src/store/autosave.ts'
import { useDesignStore } from '../../src/store/designStore.ts'

const store = useDesignStore
const initial = store.getInitialState()
afterEach(() => store.setState(initial, true))

/** A saver attached to the store, with a timer that rings when told. */
const attach = (result: SavedDesign = { kind: 'saved' }) => {
  const saved: number[] = []
  const results: SavedDesign[] = []
  const waiting = new Set<() => void>()
  const save = (design: Design): SavedDesign => {
    saved.push(design.walls.coreMm)
    return result
  }
  const attached = attachAutosave({
    store,
    autosave: { save, load: () => ({ kind: 'none' }) },
    timer: (call) => {
      waiting.add(call)
      return () => waiting.delete(call)
    },
    onSave: (told) => results.push(told),
  })
  const ring = () => {
    const calls = [...waiting]
    waiting.clear()
    for (const call of calls) call()
  }
  return { ...attached, saved, results, waiting, ring }
}

const setCore = (mm: number) =>
  store.getState().edit((design) => setField(design, 'walls.coreMm', mm).design)

describe('attachAutosave', () => {
  it('saves once, after the last of several changes', () => {
    const { saved, waiting, ring, detach } = attach()
    for (const mm of [61, 62, 63]) setCore(mm)
    expect(saved).toEqual([])
    expect(waiting.size).toBe(1)
    ring()
    expect(saved).toEqual([63])
    detach()
    expect(saved).toEqual([63])
  })

  it('waits for nothing when only the history or nothing changed', () => {
    const { waiting, detach } = attach()
    setCore(DEFAULT_DESIGN.walls.coreMm)
    store.getState().beginGesture()
    expect(waiting.size).toBe(0)
    detach()
  })

  it('saves undo and replacement too', () => {
    const { saved, ring, detach } = attach()
    setCore(70)
    ring()
    store.getState().undo()
    ring()
    expect(saved).toEqual([70, 60])
    detach()
  })

  it('saves at once what waits when flushed, and nothing otherwise', () => {
    const { saved, waiting, flush, detach } = attach()
    flush()
    expect(saved).toEqual([])
    setCore(70)
    flush()
    expect(saved).toEqual([70])
    expect(waiting.size).toBe(0)
    detach()
  })

  it('saves what waits when detached and follows no longer', () => {
    const { saved, waiting, detach } = attach()
    setCore(70)
    detach()
    setCore(80)
    expect(saved).toEqual([70])
    expect(waiting.size).toBe(0)
  })

  it('tells of a save that failed', () => {
    const failed: SavedDesign = { kind: 'failed', message: 'full' }
    const { results, ring, detach } = attach(failed)
    setCore(70)
    ring()
    expect(results).toEqual([failed])
    detach()
  })
})
