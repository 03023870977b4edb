import { describe, expect, it } from 'vitest'
import { transferables } from '../../src/workers/transferables.ts'

describe('transferables', () => {
  it('finds the memory of typed arrays at any depth, each once', () => {
    const a = new Float64Array(2)
    const b = new Uint8Array(a.buffer, 0, 4)
    const c = new Float32Array(1)
    const data = { a, inner: { b, list: [c, 3, null] }, text: 'x', missing: undefined }
    expect(transferables(data)).toEqual([a.buffer, c.buffer])
  })

  it('finds nothing in plain values', () => {
    expect(transferables(3)).toEqual([])
    expect(transferables(null)).toEqual([])
    expect(transferables({ a: [1, 'two'] })).toEqual([])
  })
})
