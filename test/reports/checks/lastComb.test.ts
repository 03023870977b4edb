import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import type { RowItem } from '../../../src/hive/hive.ts'
import { checkLastComb } from '../../../src/reports/checks/lastComb.ts'

/** A row from kinds and lengths, left to right. */
const rowOf = (...items: readonly (readonly [RowItem['kind'], number])[]): readonly RowItem[] => {
  let x = 0
  return items.map(([kind, length], i): RowItem => {
    const place = { x0: x, x1: x + length }
    x += length
    return kind === 'frame' || kind === 'follower'
      ? { kind, number: i, ...place }
      : { kind, ...place }
  })
}

const design = { frame: { ...DEFAULT_DESIGN.frame, spacingMm: 35 } }
// Half the spacing less half a capped comb of 24 mm: 5.5 mm from comb to the end of its place.
const gapIn = (row: readonly RowItem[]) => checkLastComb({ design, hive: { row } })[0]?.measured

describe('checkLastComb', () => {
  it('measures from the face of the comb to the wall, with the row pushed together', () => {
    expect(gapIn(rowOf(['space', 4], ['frame', 35], ['space', 4], ['play', 15]))).toBe(9.5)
  })

  it('finds the worst of walls, followers and divider', () => {
    const row = rowOf(
      ['space', 4],
      ['frame', 35],
      ['space', 4],
      ['follower', 12],
      ['space', 9],
      ['frame', 35],
      ['space', 4],
    )
    expect(gapIn(row)).toBe(14.5)
  })

  it('does not mind a place left empty beside the last comb', () => {
    expect(gapIn(rowOf(['space', 4], ['frame', 35], ['empty', 35], ['space', 9]))).toBe(9.5)
  })

  it('has nothing to say without frames', () => {
    expect(checkLastComb({ design, hive: { row: rowOf(['space', 4]) } })).toEqual([])
  })
})
