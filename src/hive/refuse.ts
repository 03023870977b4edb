import type { Refusal } from './refusal.ts'

/** Collects refusals while a design is measured; nothing stops at the first. */
export interface Refuser {
  readonly refusals: readonly Refusal[]
  /** Records a refusal when `isBad`; returns whether it did. */
  readonly when: (isBad: boolean, refusal: Refusal) => boolean
}

export const createRefuser = (): Refuser => {
  const refusals: Refusal[] = []
  return {
    refusals,
    when: (isBad, refusal) => {
      if (isBad) refusals.push(refusal)
      return isBad
    },
  }
}

/** Sums of lengths may differ by this from what they should be; nothing is refused for less, mm. */
export const ROUNDING = 1e-6

/** A length for a message: at most one decimal. */
export const mm = (value: number): string => `${Math.round(value * 10) / 10} mm`

/** The next tenth at or above, so that a suggested number is really enough. */
export const atLeast = (value: number): number => Math.ceil(value * 10 - 1e-6) / 10

/** The next tenth at or below. */
export const atMost = (value: number): number => Math.floor(value * 10 + 1e-6) / 10
