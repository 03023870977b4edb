import { describe, expect, it } from 'vitest'
import { CAUTIONS } from '../../src/catalog/cautions.ts'

describe('CAUTIONS', () => {
  it('gives every row its own id, a text and a source', () => {
    expect(new Set(CAUTIONS.map((row) => row.id)).size).toBe(CAUTIONS.length)
    for (const row of CAUTIONS) {
      expect(row.text).toMatch(/^[A-Z].{40,}\.$/s)
      expect(row.source.length).toBeGreaterThan(10)
    }
  })

  it('has something to say on every topic', () => {
    const topics = new Set(CAUTIONS.map((row) => row.topic))
    const all = 'saws dust foam lids lifting stings snow wind finish fire'.split(' ')
    expect([...topics].sort()).toEqual(all.sort())
  })

  it('sends readers on to codes, engineers and doctors where a program cannot judge', () => {
    const textOf = (id: string): string => CAUTIONS.find((row) => row.id === id)?.text ?? ''
    expect(textOf('snow-load')).toMatch(/code.*licensed engineer/)
    expect(textOf('wind-load')).toMatch(/codes.*licensed engineer/)
    expect(textOf('stings')).toMatch(/doctor/)
    expect(textOf('long-hive-lift')).toMatch(/doctor/)
    expect(textOf('smoker')).toMatch(/local fire/)
  })
})
