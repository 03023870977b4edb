import { describe, expect, it } from 'vitest'
import { loadUnits, saveUnits } from '../../src/store/preferences.ts'
import { INCH, METRIC, type UnitPreferences } from '../../src/units/preferences.ts'
import { createMemoryStorage, FORBIDDEN_STORAGE } from './memoryStorage.ts'

describe('loadUnits', () => {
  it('gives back what was saved, mixed as it may be', () => {
    const { storage } = createMemoryStorage()
    const mixed: UnitPreferences = { ...INCH, mass: 'kg' }
    for (const units of [INCH, METRIC, mixed]) {
      expect(saveUnits(storage, units)).toBe(true)
      expect(loadUnits(storage)).toEqual(units)
    }
  })

  it('is metric when nothing was saved or nothing can be', () => {
    expect(loadUnits(createMemoryStorage().storage)).toEqual(METRIC)
    expect(loadUnits(undefined)).toEqual(METRIC)
    expect(loadUnits(FORBIDDEN_STORAGE)).toEqual(METRIC)
    expect(saveUnits(FORBIDDEN_STORAGE, INCH)).toBe(false)
  })

  it.each(['', 'null', '[]', '"in"', '{"length":"furlong"}', '{"__proto__":{"length":"in"}}'])(
    'is metric when the storage holds %s',
    (text) => {
      const { storage, held } = createMemoryStorage()
      saveUnits(storage, INCH)
      for (const key of held.keys()) held.set(key, text)
      expect(loadUnits(storage)).toEqual(METRIC)
    },
  )

  it('keeps the units that are known when one is not', () => {
    const { storage, held } = createMemoryStorage()
    saveUnits(storage, INCH)
    for (const key of held.keys()) held.set(key, '{"length":"in","mass":"stone"}')
    expect(loadUnits(storage)).toEqual({ ...METRIC, length: 'in' })
  })
})
