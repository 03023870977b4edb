import { formatNumber } from '../../units/number.ts'

/** A price with the currency sign that the user chose: `¤ 12.50`. */
export const formatMoney = (price: number, currency: string): string =>
  currency === '' ? formatNumber(price, 2) : `${currency} ${formatNumber(price, 2)}`

/** How good a plan is, in words that promise no more than was proven. */
export const proofWords = (
  plan: { readonly price: number; readonly bound: number; readonly proven: boolean },
  currency: string,
): string => {
  if (plan.proven) {
    return `${formatMoney(plan.price, currency)}, proven: at these prices nothing cheaper exists.`
  }
  const gap = plan.price - plan.bound
  const percent = plan.price > 0 ? (100 * gap) / plan.price : 0
  return (
    `${formatMoney(plan.price, currency)}; nothing can cost less than ` +
    `${formatMoney(plan.bound, currency)}, so at most ${formatMoney(gap, currency)} ` +
    `(${formatNumber(percent, 1)} %) could be saved.`
  )
}
