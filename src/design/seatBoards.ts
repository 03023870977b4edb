import type { CavityDesign } from './schema.ts'

type BoardKey = 'followerAAfterFrame' | 'followerBAfterFrame' | 'dividerAfterFrame'

/**
 * Moves followers and divider as little as needed so that each stands in the row at a place of its
 * own, in the order they had: the divider with a frame on both sides, followers at an end at most.
 * Boards that are not fitted only stay within the row. Needs at least four frames.
 */
export function seatBoards(cavity: CavityDesign): CavityDesign {
  const within = Object.fromEntries(ALL.map((key) => [key, clampPlace(key, cavity)]))
  const bounded: CavityDesign = { ...cavity, ...within }
  const fitted = fittedBoards(cavity).toSorted((a, b) => cavity[a] - cavity[b])
  const places: number[] = []
  // From the left: each board at least one frame after the board before it.
  for (const key of fitted) places.push(Math.max(bounded[key], (places.at(-1) ?? -1) + 1))
  // From the right: each at its last place at most, and one frame before the board after it.
  for (let i = fitted.length - 1, next = cavity.frames + 1; i >= 0; i -= 1) {
    const last = fitted[i] === 'dividerAfterFrame' ? cavity.frames - 1 : cavity.frames
    next = Math.min(places[i] ?? 0, last, next - 1)
    places[i] = next
  }
  return { ...bounded, ...Object.fromEntries(fitted.map((key, i) => [key, places[i]])) }
}

const ALL: readonly BoardKey[] = ['followerAAfterFrame', 'dividerAfterFrame', 'followerBAfterFrame']

/** The boards that stand in the row; where two are at one place, the first of these goes left. */
function fittedBoards({ followers, divider }: CavityDesign): readonly BoardKey[] {
  const fitted: Record<BoardKey, boolean> = {
    followerAAfterFrame: followers !== 'none',
    dividerAfterFrame: divider === 'fitted',
    followerBAfterFrame: followers === 'two',
  }
  return ALL.filter((key) => fitted[key])
}

function clampPlace(key: BoardKey, cavity: CavityDesign): number {
  const [first, last] = key === 'dividerAfterFrame' ? [1, cavity.frames - 1] : [0, cavity.frames]
  return Math.min(Math.max(cavity[key], first), last)
}
