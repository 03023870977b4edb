import { beforeEach, describe, expect, it } from 'vitest'
import {
  keepBenchTicks,
  parseTicks,
  TICKS_KEY,
  useBenchTicks,
  withTicks,
} from '../../src/store/benchTicks.ts'

const fakeStorage = (text?: string) => {
  const items = new Map(text === undefined ? [] : [[TICKS_KEY, text]])
  return {
    items,
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
  }
}

beforeEach(() => useBenchTicks.setState({ done: {}, cleared: undefined }))

describe('withTicks', () => {
  it('sets a row, and takes it out at none', () => {
    expect(withTicks({ a: 1 }, 'b', 2)).toEqual({ a: 1, b: 2 })
    expect(withTicks({ a: 1, b: 2 }, 'b', 0)).toEqual({ a: 1 })
  })

  it('forgets the rows ticked longest ago when there are too many', () => {
    let ticks: Readonly<Record<string, number>> = {}
    for (let i = 0; i < 602; i += 1) ticks = withTicks(ticks, `row ${i}`, 1)
    expect(Object.keys(ticks)).toHaveLength(600)
    expect(ticks['row 1']).toBeUndefined()
    expect(ticks['row 601']).toBe(1)
  })
})

describe('parseTicks', () => {
  it('drops what is no whole count', () => {
    expect(parseTicks('{"a":2,"b":0.5,"c":-1,"d":"x"}')).toEqual({ a: 2 })
    for (const broken of [undefined, '', 'nonsense', 'null', '3']) {
      expect(parseTicks(broken)).toEqual({})
    }
  })
})

describe('useBenchTicks', () => {
  it('brings back what was cleared, beside what was ticked since', () => {
    const { setDone, clear, bringBack } = useBenchTicks.getState()
    setDone('a', 3)
    clear()
    expect(useBenchTicks.getState().done).toEqual({})
    setDone('b', 1)
    bringBack()
    expect(useBenchTicks.getState()).toMatchObject({ done: { a: 3, b: 1 }, cleared: undefined })
  })
})

describe('keepBenchTicks', () => {
  it('takes up the last visit and keeps every change', () => {
    const storage = fakeStorage('{"a":2}')
    const stop = keepBenchTicks(storage)
    expect(useBenchTicks.getState().done).toEqual({ a: 2 })
    useBenchTicks.getState().setDone('b', 1)
    expect(JSON.parse(storage.items.get(TICKS_KEY) ?? '')).toEqual({ a: 2, b: 1 })
    stop()
    useBenchTicks.getState().setDone('c', 1)
    expect(storage.items.get(TICKS_KEY)).not.toContain('c')
  })
})
