import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { CavityDesign } from '../../src/design/schema.ts'
import { seatBoards } from '../../src/design/seatBoards.ts'

/** Places of first follower, divider and second follower in a row of ten, all three fitted. */
const seated = (a: number, divider: number, b: number): readonly number[] => {
  const cavity: CavityDesign = {
    ...DEFAULT_DESIGN.cavity,
    frames: 10,
    followers: 'two',
    divider: 'fitted',
    followerAAfterFrame: a,
    dividerAfterFrame: divider,
    followerBAfterFrame: b,
  }
  const { followerAAfterFrame, dividerAfterFrame, followerBAfterFrame } = seatBoards(cavity)
  return [followerAAfterFrame, dividerAfterFrame, followerBAfterFrame]
}

describe('seatBoards', () => {
  it('leaves boards that stand apart', () => {
    expect(seated(2, 5, 8)).toEqual([2, 5, 8])
    expect(seated(0, 1, 10)).toEqual([0, 1, 10])
    expect(seated(8, 5, 2)).toEqual([8, 5, 2])
  })

  it('parts boards at one place, the first follower to the left', () => {
    expect(seated(5, 5, 5)).toEqual([5, 6, 7])
    expect(seated(0, 0, 0)).toEqual([0, 1, 2])
  })

  it('brings boards beyond the row back into it', () => {
    expect(seated(50, 50, 50)).toEqual([8, 9, 10])
    expect(seated(3, 50, 50)).toEqual([3, 9, 10])
  })

  it('keeps boards that are not fitted within the row, wherever the others stand', () => {
    const cavity: CavityDesign = {
      ...DEFAULT_DESIGN.cavity,
      frames: 10,
      followers: 'none',
      followerAAfterFrame: 30,
      followerBAfterFrame: 30,
      dividerAfterFrame: 30,
    }
    expect(seatBoards(cavity)).toMatchObject({
      followerAAfterFrame: 10,
      followerBAfterFrame: 10,
      dividerAfterFrame: 9,
    })
  })
})
