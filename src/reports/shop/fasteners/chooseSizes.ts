import { type Fit, OPTION_COUNT, type SizeOption } from './fitSize.ts'

/**
 * Gives every face one of its sizes so that few different ones need to be bought: again and again the
 * size that suits most of the faces that have none yet (greedy set cover). Of sizes that suit equally
 * many the longest, of these the thickest; then any that the others make needless are dropped, the
 * least wanted first. Faces that nothing fits get undefined.
 */
export const chooseSizes = (fits: readonly Fit[]): readonly (SizeOption | undefined)[] => {
  const chosen = new Set<number>()
  let open = fits.filter((fit) => fit.sizes.length > 0)
  while (open.length > 0) {
    const best = mostWanted(open)
    if (best === undefined) break
    chosen.add(best.index)
    open = open.filter((fit) => !fit.sizes.some((s) => s.index === best.index))
  }
  for (const index of [...chosen].reverse()) {
    const isNeedless = fits.every(
      ({ sizes }) =>
        sizes.every((s) => s.index !== index) ||
        sizes.some((s) => s.index !== index && chosen.has(s.index)),
    )
    if (isNeedless) chosen.delete(index)
  }
  return fits.map(({ sizes }) => longestOf(sizes, chosen))
}

const mostWanted = (fits: readonly Fit[]): SizeOption | undefined => {
  const votes = new Array<number>(OPTION_COUNT).fill(0)
  const byIndex: SizeOption[] = []
  for (const { sizes } of fits) {
    for (const size of sizes) {
      const before = votes[size.index] ?? 0
      if (before === 0) byIndex.push(size)
      votes[size.index] = before + 1
    }
  }
  return byIndex.reduce<SizeOption | undefined>(
    (best, size) => (best === undefined || isBetter(size, best, votes) ? size : best),
    undefined,
  )
}

const isBetter = (a: SizeOption, b: SizeOption, votes: readonly number[]): boolean => {
  const more = (votes[a.index] ?? 0) - (votes[b.index] ?? 0)
  return more !== 0
    ? more > 0
    : a.length !== b.length
      ? a.length > b.length
      : a.diameter > b.diameter
}

const longestOf = (
  sizes: readonly SizeOption[],
  chosen: ReadonlySet<number>,
): SizeOption | undefined => {
  let best: SizeOption | undefined
  for (const size of sizes) {
    if (chosen.has(size.index) && (best === undefined || size.length > best.length)) best = size
  }
  return best
}
