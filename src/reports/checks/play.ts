import type { Hive } from '../../hive/hive.ts'
import { assess, worstIn } from './assess.ts'
import type { Check } from './check.ts'
import { proposeFix } from './proposeFix.ts'

const BAND = { low: 10, high: 35, fixBelow: 5 } as const

/** Spare length of the row, for each colony (rule R11); the worst of them. */
export const checkPlay = ({ hive }: { readonly hive: Pick<Hive, 'row'> }): readonly Check[] => {
  const colonies = hive.row.some(({ kind }) => kind === 'divider') ? 2 : 1
  const plays = hive.row.filter(({ kind }) => kind === 'play').map(({ x0, x1 }) => x1 - x0)
  // A row without play has no item for it.
  const measured = plays.length < colonies ? 0 : (worstIn(BAND, plays) ?? 0)
  return [
    assess({
      id: 'row-play',
      title: 'Play in the row',
      quantity: 'length',
      measured,
      band: BAND,
      why: 'Without spare length the first comb rolls bees as it is lifted; too much fills with comb.',
      source: 'Langstroth boxes leave 25 mm; theapiarist.org, dummy boards',
      fix: () =>
        proposeFix('Leave 15 mm of play for each colony', [{ field: 'cavity.playMm', value: 15 }]),
    }),
  ]
}
