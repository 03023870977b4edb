import type { LossShare } from '../../../reports/heat/field/heatFieldAnswer.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatFineConductance } from '../../../units/thermal.ts'
import { wholePercents } from './fieldWords.ts'
import type { FieldView } from './useFieldView.ts'

const NAME: Readonly<Record<LossShare['id'], string>> = {
  lid: 'Lid',
  walls: 'Walls',
  floor: 'Floor',
  entrances: 'Entrances and vents',
}

/** Where the heat goes: one bar, hatched as a drawing is, with each side's share in words beside it. */
export const LossShares = ({ field }: { readonly field: FieldView }) => {
  const { thermal } = useViewStore((s) => s.units)
  const shares = field.answer?.shares ?? []
  if (shares.length === 0) return null
  const percents = wholePercents(shares.map(({ share }) => share))
  return (
    <section className={field.isOld ? 'panel-answer old' : 'panel-answer'}>
      <h4>Where the heat goes</h4>
      <div className="share-bar" aria-hidden="true">
        {shares.map(({ id, share }) => (
          <i key={id} className={`share-${id}`} style={{ flexGrow: Math.max(0, share) }} />
        ))}
      </div>
      <ul className="shares">
        {shares.map(({ id, share, conductanceWPerK }, i) => (
          <li key={id}>
            <i className={`share-key share-${id}`} aria-hidden="true" />
            <span>{NAME[id]}</span>
            <span>{formatFineConductance(conductanceWPerK, thermal)}</span>
            <strong>{share > 0 && percents[i] === 0 ? 'under 1' : percents[i]} %</strong>
          </li>
        ))}
      </ul>
    </section>
  )
}
