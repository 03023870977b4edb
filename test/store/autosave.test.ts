import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import type { Design } from '../../src/design/schema.ts'
import { createAutosave } from '../../src/store/autosave.ts'
import { createMemoryStorage, FORBIDDEN_STORAGE } from './memoryStorage.ts'

const thick = (coreMm: number): Design => ({
  ...DEFAULT_DESIGN,
  walls: { ...DEFAULT_DESIGN.walls, coreMm },
})
const LENGTH = formatDesign(DEFAULT_DESIGN).length
const NEWER = '{"combwright":9,"made":"by a later release"}'

describe('createAutosave', () => {
  it('has nothing at first, then what was saved last', () => {
    const { storage } = createMemoryStorage()
    expect(createAutosave(storage).load()).toEqual({ kind: 'none' })
    createAutosave(storage).save(thick(70))
    expect(createAutosave(storage).save(thick(80))).toEqual({ kind: 'saved' })
    expect(createAutosave(storage).load()).toEqual({ kind: 'ok', design: thick(80) })
  })

  it('keeps the design before the last, and not twice the same', () => {
    const { storage, held } = createMemoryStorage()
    const autosave = createAutosave(storage, 'k')
    for (const mm of [70, 80, 80, 80]) autosave.save(thick(mm))
    expect(held.get('k.before')).toBe(formatDesign(thick(70)))
    expect([...held.keys()].toSorted()).toEqual(['k', 'k.before'])
  })

  it('recovers the one before when the last is damaged, and says why', () => {
    const { storage, held } = createMemoryStorage()
    const autosave = createAutosave(storage, 'k')
    autosave.save(thick(70))
    autosave.save(thick(80))
    held.set('k', held.get('k')?.slice(0, 100) ?? '')
    expect(autosave.load()).toEqual({
      kind: 'recovered',
      design: thick(70),
      message: expect.stringMatching(/could not be read\. .*cut short.* kept aside/),
    })
    held.delete('k')
    expect(autosave.load()).toMatchObject({ kind: 'recovered', design: thick(70) })
  })

  it('gives the text of a design that it can’t read, and changes nothing by looking', () => {
    const { storage, held } = createMemoryStorage()
    held.set('k', NEWER)
    expect(createAutosave(storage, 'k').load()).toEqual({
      kind: 'unreadable',
      text: NEWER,
      message: expect.stringMatching(/newer Combwright \(version 9\)/),
    })
    expect([...held]).toEqual([['k', NEWER]])
  })

  it('moves what it can’t read aside before it saves over it', () => {
    const { storage, held } = createMemoryStorage()
    const autosave = createAutosave(storage, 'k')
    held.set('k', NEWER)
    held.set('k.before', 'older scraps')
    expect(autosave.save(thick(70))).toEqual({ kind: 'saved' })
    expect(held.get('k')).toBe(formatDesign(thick(70)))
    autosave.save(thick(80))
    const asides = ['k.unreadable-1', 'k.unreadable-2'].map((key) => held.get(key))
    expect(asides).toEqual([NEWER, 'older scraps'])
    // The same text found again takes no further place.
    held.set('k', NEWER)
    autosave.save(thick(90))
    expect(held.has('k.unreadable-3')).toBe(false)
  })

  it('saves nothing over an unreadable text that has nowhere to go', () => {
    const { storage, held } = createMemoryStorage()
    held.set('k', NEWER)
    for (let i = 1; i <= 9; i += 1) held.set(`k.unreadable-${i}`, `scrap ${i}`)
    expect(createAutosave(storage, 'k').save(thick(70))).toMatchObject({ kind: 'failed' })
    expect(held.get('k')).toBe(NEWER)
  })

  it('keeps the last saved design when the storage is full, and says so', () => {
    const { storage, held } = createMemoryStorage(LENGTH + 5)
    const autosave = createAutosave(storage, 'k')
    expect(autosave.save(thick(70))).toEqual({ kind: 'saved' })
    const named = {
      ...DEFAULT_DESIGN,
      title: { ...DEFAULT_DESIGN.title, note: 'far too long for the room that is left' },
    }
    expect(autosave.save(named)).toEqual({
      kind: 'failed',
      message: expect.stringMatching(/Save the design as a file/),
    })
    expect(autosave.load()).toEqual({ kind: 'ok', design: thick(70) })
    expect(held.size).toBe(1)
  })

  it('saves the newest design even when there is no room for the one before', () => {
    const { storage } = createMemoryStorage(LENGTH + 5)
    const autosave = createAutosave(storage)
    autosave.save(thick(70))
    expect(autosave.save(thick(80))).toEqual({ kind: 'saved' })
    expect(autosave.load()).toEqual({ kind: 'ok', design: thick(80) })
  })

  it('survives a browser without storage and one that forbids it', () => {
    for (const storage of [undefined, FORBIDDEN_STORAGE]) {
      const autosave = createAutosave(storage)
      expect(autosave.load()).toEqual({ kind: 'none' })
      expect(autosave.save(thick(70))).toMatchObject({ kind: 'failed' })
    }
  })
})
