import { useAnswers } from '../../store/answers.ts'
import { isClosedUp, useViewStore, type ViewState } from '../../store/viewStore.ts'
import { formatTemperature } from '../../units/temperature.ts'
import { OLD_WORDS } from '../answers/warmth/fieldWords.ts'
import { useFieldView } from '../answers/warmth/useFieldView.ts'
import { celsiusAt, useNight } from '../night.ts'
import { useSettled } from '../useSettled.ts'

const QUIET_MS = 700

/**
 * The temperature under the pointer and the part it is on. It changes with every move for the eye;
 * for a screen reader it waits until the pointer rests.
 */
export const HeatProbeLine = () => {
  const probe = useViewStore((s) => s.heatProbe)
  const unit = useViewStore((s) => s.units.temperature)
  const { answer } = useAnswers()
  const night = useNight()
  const { isOld } = useFieldView()
  const part = probe && answer?.hive.parts.find(({ id }) => id === probe.partId)
  const reading = probe
    ? `${formatTemperature(celsiusAt(probe.share, night), unit)}${part ? `, ${part.name}` : ''}`
    : ''
  const hint = useViewStore(hintFor)
  const spoken = useSettled(reading, QUIET_MS)
  return (
    <>
      <p className={probe ? 'heat-probe' : 'heat-probe hint'} aria-hidden="true">
        {reading || (isOld ? `Colours ${OLD_WORDS}.` : hint)}
        {reading && isOld && `, ${OLD_WORDS}`}
      </p>
      <p className="hidden-text" aria-live="polite">
        {spoken}
      </p>
    </>
  )
}

/** What to make of the colours, while nothing is pointed at. */
const hintFor = (view: ViewState): string => {
  const isOpen = view.lidOpen > 0 || view.floorOpen > 0
  if (view.heatScale !== 'outside' && isOpen) {
    return 'The shut hive on the cold night. Point at it to read it.'
  }
  if (view.heatScale !== 'outside') return 'The cold night. Point at the hive to read it.'
  return isClosedUp(view)
    ? 'The lighter the skin, the more heat leaks.'
    : 'To see inside, choose Inside too.'
}
