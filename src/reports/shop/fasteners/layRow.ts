import {
  clampDistances,
  type FastenerDistances,
  fastenerDistances,
} from '../../../catalog/fastenerRules.ts'
import type { Contact, Span } from './contact.ts'
import { JOINT_FAMILIES } from './jointFamilies.ts'

/** Fasteners of one face. Distances are to the nearest part's own edges. Lengths in mm. */
export interface LaidRow {
  readonly count: number
  /** Between neighbours in the row; 0 for a single one. */
  readonly spacing: number
  /** Least distance to an edge, and to an end of the grain; Infinity where there is none near. */
  readonly edge: number
  readonly end: number
  /** All distances of the rule are kept. */
  readonly isKept: boolean
  /** Edge and end distance of the rule. */
  readonly edgeWanted: number
  readonly endWanted: number
}

const known = new Map<number, FastenerDistances>()

/** The distances that a family keeps, remembered: diameters are few. */
const distancesOf = (
  contact: Contact,
  diameter: number,
  predrilled: boolean,
): FastenerDistances => {
  const { isLight } = JOINT_FAMILIES[contact.family]
  const key = diameter * 100 + (predrilled ? 1 : 0) + (isLight ? 2 : 0)
  const before = known.get(key)
  if (before !== undefined) return before
  const rule =
    isLight && predrilled ? clampDistances(diameter) : fastenerDistances(diameter, { predrilled })
  // Loads may come from any side, so the largest distance across the grain is kept too.
  const square = fastenerDistances(diameter, { predrilled, loadToGrainDeg: 90 })
  const distances = { ...rule, acrossMm: square.acrossMm }
  known.set(key, distances)
  return distances
}

/** Where a fastener may stand in one direction: `lowest` is beyond `highest` when it may not at all. */
const lowest = ({ from, endFrom, edgeFrom }: Span, { edgeMm, endMm }: FastenerDistances): number =>
  Math.max(from, endFrom + endMm, edgeFrom + edgeMm)
const highest = ({ to, endTo, edgeTo }: Span, { edgeMm, endMm }: FastenerDistances): number =>
  Math.min(to, endTo - endMm, edgeTo - edgeMm)

/** Whether every distance can be kept in both directions. */
export const hasRoom = (contact: Contact, diameter: number, predrilled: boolean): boolean => {
  const wanted = distancesOf(contact, diameter, predrilled)
  const { along, across, holes } = contact
  const [c0, c1] = [lowest(across, wanted), highest(across, wanted)]
  if (c1 < c0 - 1e-9) return false
  const [a0, a1] = [lowest(along, wanted), highest(along, wanted)]
  if (a1 < a0 - 1e-9) return false
  return (
    holes.length === 0 || freeStretches(contact, [a0, a1], (c0 + c1) / 2, wanted.edgeMm).length > 0
  )
}

/** Lays one row of fasteners on a face, evenly, as far apart as the family allows. */
export const layRow = (contact: Contact, diameter: number, predrilled: boolean): LaidRow => {
  const wanted = distancesOf(contact, diameter, predrilled)
  const { along, across, holes } = contact
  const { pattern } = JOINT_FAMILIES[contact.family]
  const least = contact.grainAlong ? wanted.alongMm : wanted.acrossMm
  // 1. The line that the row stands on.
  const [c0, c1] = [lowest(across, wanted), highest(across, wanted)]
  const isWide = c1 >= c0 - 1e-9
  const line = isWide ? (c0 + c1) / 2 : (across.from + across.to) / 2
  // 2. Its stretch; without room for the rule the middle, or two at the quarter points.
  let [a0, a1] = [lowest(along, wanted), highest(along, wanted)]
  const isLong = a1 >= a0 - 1e-9
  if (!isLong) {
    const quarter = (along.to - along.from) / 4
    const inset = pattern === 'one' || 2 * quarter < least ? 2 * quarter : quarter
    a0 = along.from + inset
    a1 = along.to - inset
  }
  // 3. Holes divide it.
  const free = holes.length === 0 ? [] : freeStretches(contact, [a0, a1], line, wanted.edgeMm)
  const isFree = holes.length === 0 || free.length > 0
  const stretches = free.length > 0 ? free : [[a0, a1] as const]
  let [count, spacing] = [0, 0]
  for (const [from, to] of stretches) {
    const n = countIn(contact, Math.max(0, to - from), least)
    count += n
    if (n > 1) spacing = Math.max(spacing, (to - from) / (n - 1))
  }
  let [first, last] = [stretches[0]?.[0] ?? a0, stretches.at(-1)?.[1] ?? a1]
  if (count === 1) first = last = (first + last) / 2
  return {
    count,
    spacing,
    edge: Math.min(
      first - along.edgeFrom,
      along.edgeTo - last,
      line - across.edgeFrom,
      across.edgeTo - line,
    ),
    end: Math.min(
      first - along.endFrom,
      along.endTo - last,
      line - across.endFrom,
      across.endTo - line,
    ),
    isKept: isWide && isLong && isFree,
    edgeWanted: wanted.edgeMm,
    endWanted: wanted.endMm,
  }
}

const countIn = (contact: Contact, length: number, least: number): number => {
  const { pattern, spacingMm } = JOINT_FAMILIES[contact.family]
  const most = 1 + Math.floor(length / least + 1e-9)
  switch (pattern) {
    case 'one':
      return 1
    case 'pair':
      return Math.min(most, 2)
    case 'given':
      return contact.count ?? 1
    case 'row':
      return Math.min(most, 1 + Math.max(1, Math.ceil(length / spacingMm - 1e-9)))
  }
}

type Stretch = readonly [number, number]

/** The parts of a row that no hole and its edge distance take. */
const freeStretches = (
  { holes }: Contact,
  row: Stretch,
  line: number,
  edge: number,
): readonly Stretch[] => {
  let free: readonly Stretch[] = [row]
  for (const [a0, a1, c0, c1] of holes) {
    if (line <= c0 - edge || line >= c1 + edge) continue
    free = free.flatMap(([from, to]): readonly Stretch[] => {
      if (a1 + edge <= from || a0 - edge >= to) return [[from, to]]
      const parts: Stretch[] = []
      if (a0 - edge >= from) parts.push([from, a0 - edge])
      if (a1 + edge <= to) parts.push([a1 + edge, to])
      return parts
    })
  }
  return free
}
