import { describe, expect, it } from 'vitest'
import { MATERIALS } from '../../src/catalog/materials.ts'
import { lookOf } from '../../src/scene/palette.ts'

describe('lookOf', () => {
  it('has a colour and a surface for every material of the catalogue', () => {
    for (const { id } of MATERIALS) {
      const look = lookOf(id)
      expect(look.colour).toMatch(/^#[0-9a-f]{6}$/)
      expect(Number.isInteger(look.surface)).toBe(true)
    }
  })

  it('draws an unknown material as plain board', () => {
    expect(lookOf('no such stuff')).toEqual(lookOf('fibreboard'))
  })

  it('keeps every foam pale and nearly grey, unlike any maker’s colour', () => {
    for (const { id, surface } of MATERIALS) {
      if (!surface.startsWith('foam')) continue
      const n = Number.parseInt(lookOf(id).colour.slice(1), 16)
      const channels = [n >> 16, (n >> 8) & 255, n & 255]
      expect(Math.max(...channels) - Math.min(...channels)).toBeLessThan(56)
      expect(Math.max(...channels)).toBeGreaterThan(150)
    }
  })
})
