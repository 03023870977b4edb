import type { Design } from '../design/schema.ts'
import type { RowItem } from './hive.ts'
import type { Refuser } from './refuse.ts'

type BoardKind = 'follower' | 'divider'

interface Board {
  readonly kind: BoardKind
  /** The field that says where it stands. */
  readonly field: string
  readonly after: number
  readonly thickness: number
}

/** Boards among the frames, from left to right. */
const rowBoards = ({ cavity }: Design): readonly Board[] => {
  const followers = (['followerAAfterFrame', 'followerBAfterFrame'] as const)
    .slice(0, { none: 0, one: 1, two: 2 }[cavity.followers])
    .map(
      (key): Board => ({
        kind: 'follower',
        field: `cavity.${key}`,
        after: cavity[key],
        thickness: cavity.followerThicknessMm,
      }),
    )
  const divider: Board[] =
    cavity.divider === 'fitted'
      ? [
          {
            kind: 'divider',
            field: 'cavity.dividerAfterFrame',
            after: cavity.dividerAfterFrame,
            thickness: cavity.dividerThicknessMm,
          },
        ]
      : []
  return [...followers, ...divider].sort((a, b) => a.after - b.after)
}

/**
 * Inside length of the cavity, mm:
 * frames × spacing + thickness of all boards + 2 × end space × (1 + boards) + play × colonies.
 */
export const cavityLengthOf = (design: Design): number => {
  const { cavity, frame } = design
  const boards = rowBoards(design)
  const thicknesses = boards.reduce((sum, b) => sum + b.thickness, 0)
  const colonies = cavity.divider === 'fitted' ? 2 : 1
  return (
    cavity.frames * frame.spacingMm +
    thicknesses +
    2 * cavity.rowEndSpaceMm * (1 + boards.length) +
    cavity.playMm * colonies
  )
}

/** Refuses rows that can't stand: boards beyond the frames, two at one place, more empties than frames. */
export const checkRow = (design: Design, refuser: Refuser): void => {
  const { cavity } = design
  const boards = rowBoards(design)
  for (const b of boards) {
    const most = b.kind === 'divider' ? cavity.frames - 1 : cavity.frames
    refuser.when(b.after > most, {
      field: b.field,
      message: `The ${b.kind} stands after frame ${b.after}, but there are ${cavity.frames} frames. Put it after frame ${most} or before.`,
      suggestion: most,
    })
  }
  boards.forEach((b, i) => {
    const next = boards[i + 1]
    if (next === undefined) return
    refuser.when(next.after === b.after, {
      field:
        b.kind === 'divider' || next.kind === 'divider'
          ? 'cavity.dividerAfterFrame'
          : 'cavity.followerBAfterFrame',
      message: `Two boards stand after frame ${b.after}. Move one of them so that at least one frame is between them.`,
    })
  })
  refuser.when(cavity.emptyPlaces >= cavity.frames, {
    field: 'cavity.emptyPlaces',
    message: `Of ${cavity.frames} places ${cavity.emptyPlaces} are left empty. Hang at least one frame.`,
    suggestion: cavity.frames - 1,
  })
}

/**
 * The row from the left end (x = 0) to the right end, without a gap. The play of each colony lies at
 * its outer end, away from the divider, so that the first comb lifted is the outermost.
 */
export const layRow = (design: Design): readonly RowItem[] => {
  const { cavity, frame } = design
  const boards = rowBoards(design)
  const items: RowItem[] = []
  let x = 0
  const next = (length: number) => {
    const from = x
    x += length
    return { x0: from, x1: x }
  }
  const space = () => {
    if (cavity.rowEndSpaceMm > 0) items.push({ kind: 'space', ...next(cavity.rowEndSpaceMm) })
  }
  const play = () => {
    if (cavity.playMm > 0) items.push({ kind: 'play', ...next(cavity.playMm) })
  }
  const hung = cavity.frames - cavity.emptyPlaces
  let followers = 0
  const boardsAfter = (place: number) => {
    for (const b of boards.filter((board) => board.after === place)) {
      space()
      if (b.kind === 'divider') items.push({ kind: 'divider', ...next(b.thickness) })
      else {
        followers += 1
        items.push({ kind: 'follower', number: followers, ...next(b.thickness) })
      }
      space()
    }
  }
  if (cavity.divider === 'fitted') play()
  space()
  boardsAfter(0)
  for (let n = 1; n <= cavity.frames; n += 1) {
    const place = next(frame.spacingMm)
    items.push(n <= hung ? { kind: 'frame', number: n, ...place } : { kind: 'empty', ...place })
    boardsAfter(n)
  }
  space()
  play()
  return items
}
