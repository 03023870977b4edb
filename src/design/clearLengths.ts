import type { LumberStockDesign } from './schema.ts'

/** A stretch of a board, from its left end, mm. */
export interface ClearLength {
  readonly fromMm: number
  readonly toMm: number
}

/**
 * The stretches of a board without a bad place, from left to right. Bad places may overlap, reach
 * over the ends or be given the wrong way round; a board without any is one stretch.
 */
export function clearLengths({
  lengthMm,
  defects,
}: Pick<LumberStockDesign, 'lengthMm' | 'defects'>): readonly ClearLength[] {
  const bad = defects
    .map(({ fromMm, toMm }) => ({ fromMm: Math.min(fromMm, toMm), toMm: Math.max(fromMm, toMm) }))
    .sort((a, b) => a.fromMm - b.fromMm)
  const clear: ClearLength[] = []
  let fromMm = 0
  for (const place of [...bad, { fromMm: lengthMm, toMm: lengthMm }]) {
    const toMm = Math.min(place.fromMm, lengthMm)
    if (toMm > fromMm) clear.push({ fromMm, toMm })
    fromMm = Math.max(fromMm, place.toMm)
  }
  return clear
}
