import type { BarPattern, BarPiece, LumberJob } from './lumberJob.ts'
import type { Bar, Problem } from './problem.ts'

/** Boards cut to the same lengths, most first. */
export interface AlikeBars {
  readonly stock: number
  readonly counts: readonly number[]
  readonly times: number
}

/** Groups boards that are cut to the same lengths: most boards first, then longest stock. */
export const groupBars = (bars: readonly Bar[]): AlikeBars[] => {
  const byKey = new Map<string, { bar: Bar; times: number }>()
  for (const bar of bars) {
    const key = `${bar.stock}:${bar.counts.join()}`
    const group = byKey.get(key)
    if (group === undefined) byKey.set(key, { bar, times: 1 })
    else group.times++
  }
  return [...byKey.values()]
    .map(({ bar, times }) => ({ ...bar, times }))
    .sort((a, b) => b.times - a.times || a.stock - b.stock)
}

/**
 * Patterns in the job's own parts and millimetres. Parts of equal length share a pattern's places; where
 * one of them runs out, the boards that are left become a pattern of their own.
 */
export const describePlan = (
  job: LumberJob,
  problem: Problem,
  bars: readonly Bar[],
): BarPattern[] => {
  const left = job.parts.map(({ count }) => count)
  return groupBars(bars).flatMap(({ stock, counts, times }) => {
    const patterns: BarPattern[] = []
    for (let done = 0; done < times; ) {
      const parts = pickParts(problem, counts, { left, times: times - done })
      const alike = boardsFor(parts, left, times - done)
      for (const part of parts) left[part] = (left[part] ?? 0) - alike
      patterns.push(layPieces(job, { stock: problem.stocks[stock] ?? 0, parts, count: alike }))
      done += alike
    }
    return patterns
  })
}

/** For each place of a pattern a part of its length: one that lasts for all boards, else the most frequent. */
const pickParts = (
  { members }: Problem,
  counts: readonly number[],
  { left, times }: { readonly left: readonly number[]; readonly times: number },
): number[] => {
  const rest = [...left]
  const parts: number[] = []
  counts.forEach((count, kind) => {
    for (let place = 0; place < count; place++) {
      const choices = (members[kind] ?? []).filter((part) => (rest[part] ?? 0) > 0)
      const lasting = choices.filter((part) => (rest[part] ?? 0) >= times)
      // The one that runs out soonest of those that last leaves the most freedom.
      const part =
        lasting.sort((a, b) => (rest[a] ?? 0) - (rest[b] ?? 0))[0] ??
        choices.sort((a, b) => (rest[b] ?? 0) - (rest[a] ?? 0))[0]
      if (part === undefined) throw new Error('describePlan: more pieces than parts')
      rest[part] = Math.max(0, (rest[part] ?? 0) - times)
      parts.push(part)
    }
  })
  return parts
}

/** How many boards can be cut to exactly these parts. */
const boardsFor = (parts: readonly number[], left: readonly number[], times: number): number => {
  const perBoard = new Map<number, number>()
  for (const part of parts) perBoard.set(part, (perBoard.get(part) ?? 0) + 1)
  let most = times
  for (const [part, count] of perBoard) {
    most = Math.min(most, Math.floor((left[part] ?? 0) / count))
  }
  return Math.max(1, most)
}

const layPieces = (
  job: LumberJob,
  pattern: { readonly stock: number; readonly parts: readonly number[]; readonly count: number },
): BarPattern => {
  let atMm = job.trimMm / 2
  const pieces: BarPiece[] = pattern.parts.map((part) => {
    const lengthMm = job.parts[part]?.lengthMm ?? 0
    const piece = { part, fromMm: withoutDust(atMm), lengthMm }
    atMm += lengthMm + job.kerfMm
    return piece
  })
  const endMm = (job.stocks[pattern.stock]?.lengthMm ?? 0) - job.trimMm / 2
  return {
    stock: pattern.stock,
    count: pattern.count,
    pieces,
    offcutMm: Math.max(0, withoutDust(endMm - atMm)),
  }
}

/** Rounds off what adding up leaves in the last digits. */
const withoutDust = (mm: number): number => Math.round(mm * 1e9) / 1e9
