import type { PartClass } from './sheetModel.ts'

type Rank = (part: PartClass) => number

/** Ways to rank parts, the one to place first with the highest rank. */
const RANKS: readonly Rank[] = [
  (part) => part.area,
  (part) => Math.max(part.length, part.width),
  (part) => part.width,
  (part) => part.length,
  (part) => part.length + part.width,
  (part) => Math.min(part.length, part.width),
]

/** The number of orders without chance. */
export const PLAIN_ORDERS = RANKS.length

/** Parts by one of the ranks. */
export function orderParts(parts: readonly PartClass[], rank: number): readonly PartClass[] {
  const of = RANKS[rank % RANKS.length]
  return of ? [...parts].sort((a, b) => of(b) - of(a)) : parts
}

/** Parts by a rank drawn by lot, which chance blurs by up to two fifths. */
export function shuffleParts(
  parts: readonly PartClass[],
  random: () => number,
): readonly PartClass[] {
  const of = RANKS[Math.floor(random() * RANKS.length)]
  if (!of) return parts
  const blur = random() * 0.4
  const keyed = parts.map((part) => ({ part, key: of(part) * (1 - blur * random()) }))
  return keyed.sort((a, b) => b.key - a.key).map(({ part }) => part)
}
