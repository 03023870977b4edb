import { describe, expect, it } from 'vitest'
import { isKept } from '../../../../src/panels/workshop/cutSheets/isKept.ts'

const rect = (lengthMm: number, widthMm: number) => ({ xMm: 0, yMm: 0, lengthMm, widthMm })

describe('isKept', () => {
  it('keeps what is long and not too narrow, whichever way round', () => {
    expect(isKept(rect(300, 150), 300)).toBe(true)
    expect(isKept(rect(150, 300), 300)).toBe(true)
    expect(isKept(rect(299, 299), 300)).toBe(false)
    expect(isKept(rect(1200, 149), 300)).toBe(false)
  })
})
