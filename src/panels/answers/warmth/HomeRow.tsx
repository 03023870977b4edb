import { useSavedDesigns } from '../../../store/savedDesigns.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatTrimmed } from '../../../units/number.ts'
import { formatConductance } from '../../../units/thermal.ts'
import { timesWords } from './fieldWords.ts'
import type { Home, HomeFigures } from './homesBeside.ts'

interface HomeRowProps {
  readonly home: Home
  /** The loss at the end of every bar, W/K. */
  readonly end: number
  readonly ownWPerK: number | undefined
  readonly isWorking: boolean
}

/** One home: name, heat lost, a bar with its certain band, and how it compares with this hive. */
export const HomeRow = ({ home, end, ownWPerK, isWorking }: HomeRowProps) => {
  const { thermal } = useViewStore((s) => s.units)
  const remove = useSavedDesigns((s) => s.remove)
  const { figures, kind, name, about } = home
  const compares = figures !== undefined && ownWPerK !== undefined && kind !== 'this'
  const words = [
    compares ? timesWords(figures.conductanceWPerK, ownWPerK) : '',
    figures?.volumeL === undefined
      ? ''
      : `Room inside ${formatTrimmed(figures.volumeL, 0)}\u00a0L.`,
    about,
  ]
  return (
    <li className={kind}>
      <span className="home-name">{name}</span>
      {figures ? (
        <strong>{formatConductance(figures.conductanceWPerK, thermal, 2)}</strong>
      ) : (
        <span>{isWorking ? 'Working it out' : 'No figure yet'}</span>
      )}
      {figures && <HomeBar figures={figures} end={end} />}
      <span className="about home-about">
        {words.filter(Boolean).join(' ')}{' '}
        {kind === 'saved' && (
          <button
            type="button"
            className="link"
            aria-label={`Take ${name} out of the list`}
            onClick={() => remove(home.id)}
          >
            Take out
          </button>
        )}
      </span>
    </li>
  )
}

const HomeBar = ({ figures, end }: { readonly figures: HomeFigures; readonly end: number }) => {
  const percent = (wPerK: number) => `${(wPerK / end) * 100}%`
  const { conductanceWPerK, lowerWPerK, upperWPerK } = figures
  return (
    <span className="home-bar" aria-hidden="true">
      <i style={{ width: percent(conductanceWPerK) }} />
      <b style={{ left: percent(lowerWPerK), width: percent(upperWPerK - lowerWPerK) }} />
    </span>
  )
}
