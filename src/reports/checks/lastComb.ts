import type { Design } from '../../design/schema.ts'
import type { Hive, RowItem } from '../../hive/hive.ts'
import { assess, worstIn } from './assess.ts'
import type { Check } from './check.ts'
import { proposeFix, stepDown } from './proposeFix.ts'

/** Capped worker brood comb is 21 to 24 mm thick (Seeley and Morse, 1976, table II); the thickest. */
const COMB_THICKNESS_MM = 24
const BAND = { low: 8, high: 10 } as const

/**
 * The way for bees past the outer face of the last comb (rule R12), with the row pushed together: the
 * play is not counted, and no comb hangs beside a place left empty.
 */
export const checkLastComb = (context: {
  readonly design: Pick<Design, 'frame'>
  readonly hive: Pick<Hive, 'row'>
}): readonly Check[] => {
  const { spacingMm } = context.design.frame
  const beside = (spacingMm - COMB_THICKNESS_MM) / 2
  const measured = worstIn(
    BAND,
    endSpaces(context.hive.row).map((space) => space + beside),
  )
  if (measured === undefined) return []
  return [
    assess({
      id: 'last-comb-space',
      title: 'Last comb to wall or board',
      quantity: 'length',
      measured,
      band: BAND,
      why: 'Bees need one clear way past the last comb; in a wider gap they build more comb.',
      source: 'bienenfreund24.de, comb and frame sizes: 10 mm; comb 24 mm thick',
      fix: () =>
        proposeFix('Change the space at boards and ends', [
          { field: 'cavity.rowEndSpaceMm', value: stepDown(9.25 - beside, 0.5) },
        ]),
    }),
  ]
}

/** Space between each outer frame and the wall or board beside it, mm. */
const endSpaces = (row: readonly RowItem[]): readonly number[] => [
  ...spacesBefore(row),
  ...spacesBefore(row.toReversed()),
]

const spacesBefore = (row: readonly RowItem[]): readonly number[] => {
  const found: number[] = []
  let space: number | undefined = 0
  for (const item of row) {
    if (item.kind === 'frame') {
      if (space !== undefined) found.push(space)
      space = undefined
    } else if (item.kind === 'empty') space = undefined
    else if (item.kind === 'follower' || item.kind === 'divider') space = 0
    else if (item.kind === 'space' && space !== undefined) space += item.x1 - item.x0
  }
  return found
}
