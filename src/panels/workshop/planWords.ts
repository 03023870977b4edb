import type { CuttingPlan } from '../../reports/shop/cutting/cuttingPlan.ts'
import { formatMoney } from '../../sheets/shop/moneyWords.ts'
import type { LumberResult } from '../../solvers/cutting/lumber/lumberJob.ts'
import type { SheetResult } from '../../solvers/cutting/sheets/sheetJob.ts'
import { formatTrimmed } from '../../units/number.ts'

/** How good a plan is; each has a mark of its own. */
export type PlanVerdict = 'proven' | 'gap' | 'looking' | 'refused'

export interface PlanWords {
  readonly verdict: PlanVerdict
  readonly text: string
}

type AnyResult = LumberResult | SheetResult

/** What a plan costs, and the least that any plan can cost. */
export interface PlanPrice {
  readonly price: number
  readonly bound: number
  readonly isProven: boolean
}

export const PROVEN = 'Proven cheapest: nothing cheaper exists for these prices'

/** The state of one group, or of several together, in honest words. */
export const describePrice = (
  { price, bound, isProven }: PlanPrice,
  { isFinal, currency }: { readonly isFinal: boolean; readonly currency: string },
): PlanWords => {
  if (isProven) return { verdict: 'proven', text: PROVEN }
  const gap = gapWords(price, bound, currency)
  return isFinal
    ? { verdict: 'gap', text: gap }
    : { verdict: 'looking', text: `Still looking for better. So far: ${lowerFirst(gap)}` }
}

/** The state of one group's answer. */
export const describeResult = (
  result: AnyResult,
  context: { readonly isFinal: boolean; readonly currency: string },
): PlanWords =>
  result.kind === 'refused'
    ? { verdict: 'refused', text: result.message }
    : describePrice({ ...result, isProven: result.proven }, context)

/** All groups that have a plan, together; proven only when each of them is. */
export const sumPlan = (results: readonly AnyResult[]): PlanPrice | undefined => {
  const plans = results.filter((result) => result.kind === 'plan')
  if (plans.length === 0) return undefined
  return {
    price: plans.reduce((sum, { price }) => sum + price, 0),
    bound: plans.reduce((sum, { bound }) => sum + bound, 0),
    isProven: plans.every(({ proven }) => proven),
  }
}

/** Both kinds of answers of a plan. */
export const allResults = ({ lumber, sheets }: CuttingPlan): readonly AnyResult[] => [
  ...lumber,
  ...sheets,
]

/** What planning saves against cutting parts as they come; undefined when it is nothing to speak of. */
export const savedByPlanning = (results: readonly LumberResult[]): number | undefined => {
  const saved = results.reduce(
    (sum, r) => sum + (r.kind === 'plan' ? Math.max(0, r.plainPrice - r.price) : 0),
    0,
  )
  return saved >= LEAST_MONEY ? saved : undefined
}

/** `At most 3.20 (1.1 %) above the cheapest possible`. */
const gapWords = (price: number, bound: number, currency: string): string => {
  const gap = Math.max(0, price - bound)
  // Below the smallest coin the numbers would say 0.00, which looks like a proof.
  if (gap < LEAST_MONEY) return 'As cheap as far as is known, but not proven'
  const percent = formatTrimmed((gap / price) * 100, 1)
  return `At most ${formatMoney(gap, currency)} (${percent} %) above the cheapest possible`
}

const LEAST_MONEY = 0.005

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
