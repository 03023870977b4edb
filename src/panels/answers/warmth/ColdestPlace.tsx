import { useViewStore } from '../../../store/viewStore.ts'
import { formatNumber } from '../../../units/number.ts'
import { formatTemperature } from '../../../units/temperature.ts'
import { splitUnit } from '../../inputs/numberShown.ts'
import { celsiusAt, useNight } from '../../night.ts'
import type { FieldView } from './useFieldView.ts'

/** The coldest place inside: how cold on the cold night, where, and its temperature factor. */
export const ColdestPlace = ({ field }: { readonly field: FieldView }) => {
  const unit = useViewStore((s) => s.units.temperature)
  const select = useViewStore((s) => s.select)
  const night = useNight()
  if (field.answer === undefined) return null
  const { fRsi, place, partId } = field.answer.coldest
  // A tenth of a degree would promise more than the reckoning knows.
  const show = (celsius: number) => formatTemperature(celsius, unit, { decimals: 0 })
  const { figure, unit: unitName } = splitUnit(show(celsiusAt(fRsi, night)))
  return (
    <section className={field.isOld ? 'panel-answer old' : 'panel-answer'}>
      <h4>Coldest place inside</h4>
      <p className="big-figure">
        {figure} <span className="big-unit">{unitName}</span>
        <span className="big-note"> on the cold night</span>
      </p>
      <p className="wide">
        {sentence(place)} The air is {show(night.outsideC)} outside and {show(night.insideC)} in the
        hive.{' '}
        {partId !== undefined && (
          <button type="button" className="link" onClick={() => select([partId])}>
            Show it in the hive
          </button>
        )}
      </p>
      <dl className="figures">
        <dt>Temperature factor fRsi</dt>
        <dd>{formatNumber(fRsi, 2)}</dd>
      </dl>
      <p className="about">
        0 would be as cold as the air outside, 1 as warm as the air inside. Water settles first
        where it is lowest.
      </p>
    </section>
  )
}

/** `in the corner …` as a sentence of its own. */
const sentence = (place: string): string =>
  place === '' ? '' : `${place.charAt(0).toUpperCase()}${place.slice(1)}.`
