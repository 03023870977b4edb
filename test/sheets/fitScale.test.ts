import { describe, expect, it } from 'vitest'
import { fitScale, fitsIn } from '../../src/sheets/fitScale.ts'

const size = (widthMm: number, heightMm: number) => ({ widthMm, heightMm })

describe('fitScale', () => {
  it('takes the largest standard scale that fits both ways', () => {
    expect(fitScale(size(100, 100), size(100, 100))).toBe(1)
    // 101 / 1 is too wide; there is nothing between 1:1 and 1:2.
    expect(fitScale(size(101, 50), size(100, 100))).toBe(2)
    // 1000 / 5 = 200 fits the width, 900 / 5 = 180 does not fit 150, 900 / 10 = 90 does.
    expect(fitScale(size(1000, 900), size(250, 150))).toBe(10)
  })

  it('leaves room for what does not shrink', () => {
    expect(fitScale(size(1000, 100), size(210, 100), size(10, 0))).toBe(5)
    expect(fitScale(size(1000, 100), size(210, 100), size(11, 0))).toBe(10)
  })

  it('falls back to the smallest scale when nothing fits', () => {
    expect(fitScale(size(1e6, 1), size(100, 100))).toBe(100)
  })
})

describe('fitsIn', () => {
  it('allows an exact fit', () => {
    expect(fitsIn(size(3, 4), size(3, 4))).toBe(true)
    expect(fitsIn(size(3, 4.1), size(3, 4))).toBe(false)
  })
})
