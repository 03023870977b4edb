import type { Lift } from './stage.ts'

/** Longer than two hands can guide, mm; or so long and so wide. Common practice. */
const LONG_MM = 1200
const LARGE_MM = [900, 600] as const

/**
 * Why a second pair of hands is needed, and what to do without; undefined when one person can. What
 * weighs more than the keeper lifts in comfort needs two.
 */
export const secondPerson = (
  lift: Lift | undefined,
  comfortableLiftKg: number,
): string | undefined => {
  if (lift === undefined) return undefined
  const [long, wide] = lift.sidesMm
  const reasons = [
    lift.massKg > comfortableLiftKg ? `${lift.what} is heavier than you lift in comfort.` : '',
    long > LONG_MM || (long > LARGE_MM[0] && wide > LARGE_MM[1])
      ? `${lift.what} is too large for two hands to guide.`
      : '',
    lift.held ?? '',
  ].filter((reason) => reason !== '')
  return reasons.length === 0 ? undefined : `${reasons.join(' ')} Alone: ${lift.alone}`
}
