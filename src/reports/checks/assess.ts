import type { Check, CheckQuantity, Fix, Verdict } from './check.ts'

/**
 * Where a measure is right, worth a look, or wrong. Between `low` and `high` it is right; below
 * `fixBelow` or above `fixAbove` it is wrong; in between it deserves a look. Limits count as right.
 */
export interface Band {
  readonly low?: number | undefined
  readonly high?: number | undefined
  readonly fixBelow?: number | undefined
  readonly fixAbove?: number | undefined
}

export interface Finding {
  readonly id: string
  readonly title: string
  readonly quantity: CheckQuantity
  readonly measured: number
  readonly band: Band
  readonly why: string
  readonly source: string
  /** Asked for only when the finding is not all right. */
  readonly fix?: () => Fix | undefined
  readonly partIds?: readonly string[]
}

/** Turns a measure and its band into a check. */
export const assess = (finding: Finding): Check => {
  const { id, title, quantity, measured, band, why, source, partIds = [] } = finding
  const verdict = verdictIn(band, measured)
  return {
    id,
    title,
    verdict,
    quantity,
    measured,
    limits: { low: band.low, high: band.high },
    why,
    source,
    fix: verdict === 'ok' ? undefined : finding.fix?.(),
    partIds,
  }
}

/** Sums of lengths come out a hair off their limit; no saw sees this, in the unit of the measure. */
const HAIR = 1e-6

export const verdictIn = (band: Band, value: number): Verdict => {
  const isBelow = (limit: number | undefined): boolean =>
    limit !== undefined && value < limit - HAIR
  const isAbove = (limit: number | undefined): boolean =>
    limit !== undefined && value > limit + HAIR
  if (isBelow(band.fixBelow) || isAbove(band.fixAbove)) return 'fix'
  return isBelow(band.low) || isAbove(band.high) ? 'look' : 'ok'
}

/** How far a value is outside low and high; 0 within. For picking the worst of several. */
export const distanceOutside = ({ low, high }: Band, value: number): number =>
  Math.max(0, low === undefined ? 0 : low - value, high === undefined ? 0 : value - high)

/** The value furthest outside the band, or the last furthest from its middle; undefined for none. */
export const worstIn = (band: Band, values: readonly number[]): number | undefined =>
  values.reduce<number | undefined>(
    (worst, value) =>
      worst === undefined || distanceOutside(band, value) > distanceOutside(band, worst)
        ? value
        : worst,
    undefined,
  )
