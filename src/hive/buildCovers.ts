import type { Design } from '../design/schema.ts'
import { box } from '../geometry/box.ts'
import { BEE_TIGHT } from './checkMeasures.ts'
import type { HiveDimensions } from './dimensions.ts'
import { UP } from './directions.ts'
import type { RowItem } from './hive.ts'
import { makePart } from './makePart.ts'
import { CLOTH_THICKNESS, LOOSE_CLEARANCE } from './measure.ts'
import type { Part } from './part.ts'
import { STEP } from './steps.ts'

type Span = readonly [number, number]

const RESTS = ['ring/rest-front-wall', 'ring/rest-back-wall']

/** Parts a span into equal pieces with a hair of room between them. */
const divide = ([x0, x1]: Span, count: number): readonly Span[] => {
  const width = (x1 - x0 - (count - 1) * LOOSE_CLEARANCE) / count
  return Array.from({ length: count }, (_, i) => {
    const from = x0 + i * (width + LOOSE_CLEARANCE)
    return [from, i === count - 1 ? x1 : from + width] as const
  })
}

/** The stretches that covers fill: one, or one on each side of the divider's middle. */
const coverSpans = (x0: number, x1: number, row: readonly RowItem[]): readonly Span[] => {
  const divider = row.find((item) => item.kind === 'divider')
  if (divider === undefined) return [[x0, x1]]
  const middle = (divider.x0 + divider.x1) / 2
  return [
    [x0, middle - LOOSE_CLEARANCE / 2],
    [middle + LOOSE_CLEARANCE / 2, x1],
  ]
}

/** Shares the boards out over the spans by length, at least one to each. */
const shareBoards = (spans: readonly Span[], boards: number): readonly number[] => {
  const [first, second] = spans
  if (first === undefined || second === undefined) return [boards]
  const share = Math.round((boards * (first[1] - first[0])) / (second[1] - first[0]))
  const left = Math.min(boards - 1, Math.max(1, share))
  return [left, boards - left]
}

/** Loose boards across the hive, over the frames; a cloth under them if wanted. */
export const buildCovers = (
  design: Design,
  d: HiveDimensions,
  row: readonly RowItem[],
): readonly Part[] => {
  const { cavity } = design
  const reach = cavity.coverLedgeMm - LOOSE_CLEARANCE
  const half = d.cavityWidth / 2 + d.seatWidth + reach
  const spans = coverSpans(-reach, d.cavityLength + reach, row)
  const shares = shareBoards(spans, cavity.coverSegments)
  const hasCloth = cavity.closure === 'cloth'
  const clothTop = d.coverLedgeHeight + (hasCloth ? CLOTH_THICKNESS : 0)
  const cloths = hasCloth
    ? spans.map((span, i) =>
        makePart({
          id: `covers/cloth-${i + 1}`,
          name: 'Cover cloth',
          group: 'covers',
          motion: 'cover',
          index: i,
          material: 'cotton-canvas',
          grain: 'none',
          solids: box(span, [d.coverLedgeHeight, clothTop], [-half, half]),
          fixedTo: RESTS,
          explode: { direction: UP, layer: 0 },
          step: STEP.covers,
        }),
      )
    : []
  const boards = spans.flatMap((span, i) =>
    divide(span, shares[i] ?? 1).map((place) => ({ place, under: i })),
  )
  return [
    ...cloths,
    ...boards.map(({ place, under }, index) =>
      makePart({
        id: `covers/board-${index + 1}`,
        name: 'Cover board',
        group: 'covers',
        motion: 'cover',
        index,
        material: cavity.coverMaterial,
        grain: 'z',
        solids: box(place, [clothTop, d.wallTop], [-half, half]),
        fixedTo: hasCloth ? [`covers/cloth-${under + 1}`] : RESTS,
        explode: { direction: UP, layer: 1 },
        step: STEP.covers,
      }),
    ),
  ]
}

/** What closes the top already, with touching top bars: top bars, followers and divider along x. */
const closedSpans = (design: Design, row: readonly RowItem[]): readonly Span[] =>
  row.flatMap((item): readonly Span[] => {
    if (item.kind === 'follower' || item.kind === 'divider') return [[item.x0, item.x1]]
    if (item.kind !== 'frame') return []
    const [middle, half] = [(item.x0 + item.x1) / 2, design.frame.topBarWidthMm / 2]
    return [[middle - half, middle + half]]
  })

/** With top bars that touch: strips that close every gap in the row wider than a bee. */
export const buildClosers = (
  design: Design,
  d: HiveDimensions,
  row: readonly RowItem[],
): readonly Part[] => {
  const half = design.frame.topBarLengthMm / 2
  const gaps: Span[] = []
  let closed = 0
  for (const [from, to] of closedSpans(design, row)) {
    gaps.push([closed, from])
    closed = to
  }
  gaps.push([closed, d.cavityLength])
  return gaps
    .filter(([x0, x1]) => x1 - x0 > BEE_TIGHT + 1e-6)
    .map((place, i) =>
      makePart({
        id: `covers/closer-${i + 1}`,
        name: 'Closing strip',
        group: 'covers',
        motion: 'cover',
        index: i,
        material: 'pine',
        grain: 'z',
        solids: box(place, [d.restHeight, d.frameTop], [-half, half]),
        fixedTo: ['front-wall/lining', 'back-wall/lining'],
        explode: { direction: UP, layer: 0 },
        step: STEP.covers,
      }),
    )
}
