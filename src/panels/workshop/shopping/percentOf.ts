import { formatTrimmed } from '../../../units/number.ts'

/** A share of 0 to 1 in whole percents: `44 %`, `under 1 %`. */
export const percentOf = (share: number): string =>
  share > 0 && share < 0.01 ? 'under 1 %' : `${formatTrimmed(share * 100, 0)} %`
