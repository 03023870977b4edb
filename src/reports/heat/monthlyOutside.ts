import type { Design } from '../../design/schema.ts'

export interface OutsideMonth {
  /** 1 is January. */
  readonly month: number
  /** Mean of the month, °C. */
  readonly outsideC: number
}

/**
 * The twelve monthly means outside, from the year's mean and the swing from the coldest month to the
 * warmest: one cosine with the coldest month in January and the warmest in July, so for the northern
 * half of the world. A generic year, not a record of any place. Source: common practice.
 */
export const computeMonthlyOutside = (
  site: Pick<Design['site'], 'annualMeanC' | 'seasonalSwingC'>,
): readonly OutsideMonth[] =>
  MONTHS.map((month) => {
    const turn = (2 * Math.PI * (month - 1)) / MONTHS.length
    return { month, outsideC: site.annualMeanC - (site.seasonalSwingC / 2) * Math.cos(turn) }
  })

const MONTHS = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12] as const
