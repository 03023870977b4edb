import { describe, expect, it } from 'vitest'
import { clearLengths } from '../../src/design/clearLengths.ts'

const clearOf = (lengthMm: number, ...places: readonly (readonly [number, number])[]) =>
  clearLengths({ lengthMm, defects: places.map(([fromMm, toMm]) => ({ fromMm, toMm })) }).map(
    ({ fromMm, toMm }) => [fromMm, toMm],
  )

describe('clearLengths', () => {
  it('is the whole board without bad places', () => {
    expect(clearOf(2400)).toEqual([[0, 2400]])
  })

  it('leaves what is before, between and behind bad places, in whatever order they come', () => {
    expect(clearOf(2400, [1500, 1600], [300, 500])).toEqual([
      [0, 300],
      [500, 1500],
      [1600, 2400],
    ])
  })

  it('takes overlapping places as one, and those the wrong way round as they are meant', () => {
    expect(clearOf(1000, [600, 200], [500, 700], [300, 400])).toEqual([
      [0, 200],
      [700, 1000],
    ])
  })

  it('has no length at an end that is bad, or on a board that is bad altogether', () => {
    expect(clearOf(1000, [0, 100], [950, 1200])).toEqual([[100, 950]])
    expect(clearOf(1000, [0, 1000])).toEqual([])
    expect(clearOf(1000, [2000, 2100])).toEqual([[0, 1000]])
  })
})
