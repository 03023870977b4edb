import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import { setFrameCount } from '../../src/design/frameEdits.ts'
import { keepSavedDesigns, SAVED_KEY } from '../../src/store/keepSavedDesigns.ts'
import { MAX_SAVED, useSavedDesigns } from '../../src/store/savedDesigns.ts'
import type { StorageLike } from '../../src/store/storage.ts'
import { createMemoryStorage, FORBIDDEN_STORAGE } from './memoryStorage.ts'

const initial = useSavedDesigns.getInitialState()
const stops: (() => void)[] = []
afterEach(() => {
  for (const stop of stops.splice(0)) stop()
  useSavedDesigns.setState(initial, true)
})

const list = () => useSavedDesigns.getState()
const designs = () => list().saved.map((saved) => saved.design)
const twelve = setFrameCount(DEFAULT_DESIGN, 12)

/** Ends one visit, so that nothing but the storage passes to the next. */
const endVisit = () => {
  for (const stop of stops.splice(0)) stop()
  useSavedDesigns.setState(initial, true)
}

const visit = (storage: StorageLike | undefined) => {
  const kept = keepSavedDesigns(storage)
  stops.push(kept.stop)
  return kept
}

describe('keepSavedDesigns', () => {
  it('brings the list back at the next visit, in its order', () => {
    const { storage } = createMemoryStorage()
    visit(storage)
    list().add(twelve)
    list().add(DEFAULT_DESIGN)
    endVisit()
    expect(designs()).toEqual([])
    visit(storage)
    expect(designs()).toEqual([twelve, DEFAULT_DESIGN])
    expect(list().message).toBeUndefined()
    list().remove(list().saved[0]?.id ?? '')
    endVisit()
    visit(storage)
    expect(designs()).toEqual([DEFAULT_DESIGN])
  })

  it.each([
    ['missing', undefined],
    ['forbidden', FORBIDDEN_STORAGE],
    ['full', createMemoryStorage(40).storage],
  ])('keeps the list for this visit and says so when the storage is %s', (_, storage) => {
    visit(storage)
    list().add(DEFAULT_DESIGN)
    expect(designs()).toEqual([DEFAULT_DESIGN])
    expect(list().message).toMatchObject({
      kind: 'error',
      text: expect.stringContaining('could not be kept in this browser'),
    })
  })

  it.each(['cut sho', '[]', 'null', '{"designs":7}'])(
    'says once that %j is no list, and never loses it',
    (text) => {
      const { storage, held } = createMemoryStorage()
      held.set(SAVED_KEY, text)
      visit(storage)
      expect(designs()).toEqual([])
      expect(list().message?.text).toContain('could not be read')
      list().add(DEFAULT_DESIGN)
      expect(held.get(SAVED_KEY)).toContain(JSON.stringify(text))
      endVisit()
      visit(storage)
      expect(designs()).toEqual([DEFAULT_DESIGN])
      expect(list().message).toBeUndefined()
    },
  )

  it('reads what it can and keeps a design of a newer release beside it', () => {
    const { storage, held } = createMemoryStorage()
    const newer = { combwright: 99, wings: 2 }
    held.set(SAVED_KEY, JSON.stringify({ designs: [newer, JSON.parse(formatDesign(twelve))] }))
    visit(storage)
    expect(designs()).toEqual([twelve])
    expect(list().message?.kind).toBe('error')
    list().add(DEFAULT_DESIGN)
    expect(JSON.parse(held.get(SAVED_KEY) ?? '')).toMatchObject({ unread: [newer] })
  })

  it('takes no more than it holds and keeps the rest', () => {
    const { storage, held } = createMemoryStorage()
    const all = Array.from({ length: MAX_SAVED + 1 }, (_, i) =>
      setFrameCount(DEFAULT_DESIGN, 10 + i),
    )
    const stored = all.map((design) => JSON.parse(formatDesign(design)))
    held.set(SAVED_KEY, JSON.stringify({ designs: stored }))
    visit(storage)
    expect(designs()).toEqual(all.slice(0, MAX_SAVED))
    list().remove(list().saved[0]?.id ?? '')
    endVisit()
    visit(storage)
    expect(designs()).toEqual(all.slice(1))
  })

  it('reads again what another window has changed', () => {
    const { storage, held } = createMemoryStorage()
    const { reload } = visit(storage)
    held.set(SAVED_KEY, JSON.stringify({ designs: [JSON.parse(formatDesign(twelve))] }))
    reload()
    expect(designs()).toEqual([twelve])
  })
})
