import type { Design } from '../../design/schema.ts'
import type { KeeperReport } from '../keeper/computeKeeper.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { proposeFix } from './proposeFix.ts'

/** The most that the lifting equation allows anyone, held close and upright, kg. */
const NIOSH_MOST_KG = 23

/** The heaviest thing lifted in a season against what its keeper lifts in comfort (rules R18, S21). */
export const checkHeaviestLift = ({
  design,
  keeper,
}: {
  readonly design: Pick<Design, 'keeper' | 'cavity'>
  readonly keeper: Pick<KeeperReport, 'heaviestLift'>
}): readonly Check[] => {
  const { comfortableLiftKg } = design.keeper
  const { name, massKg } = keeper.heaviestLift
  return [
    assess({
      id: 'heaviest-lift',
      title: 'Heaviest lift',
      quantity: 'mass',
      measured: massKg,
      band: { high: comfortableLiftKg, fixAbove: Math.min(2 * comfortableLiftKg, NIOSH_MOST_KG) },
      why: `The heaviest thing you lift is: ${name}. Backs are hurt by lifts held out in front.`,
      source: 'your own limit; NIOSH lifting equation, 1994: index over 2, and 23 kg at best',
      fix: () => {
        if (name !== 'Cover board') return undefined
        const boards = Math.ceil((design.cavity.coverSegments * massKg) / comfortableLiftKg)
        return proposeFix(`Divide the cover into ${boards} boards`, [
          { field: 'cavity.coverSegments', value: boards },
        ])
      },
    }),
  ]
}
