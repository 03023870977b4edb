import type { WholeShop } from '../../../reports/shop/benchReport.ts'
import { useBenchTicks } from '../../../store/benchTicks.ts'
import { useDesignStore } from '../../../store/designStore.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { measureLine } from '../measureLine.ts'
import { useChooseRow } from '../useChooseRow.ts'
import { SetUpCard } from './SetUpCard.tsx'
import { isSetUpDone } from './tickKey.ts'

/** A card for each setting, in the order of work. */
export const SetUpsSheet = ({ shop }: { readonly shop: WholeShop }) => {
  const name = useDesignStore((s) => s.design.title.name)
  const unit = useViewStore((s) => s.units.length)
  const ticks = useBenchTicks((s) => s.done)
  const choice = useChooseRow(shop.cutList)
  const { setUps, tools, nearTwins } = shop.setUps
  if (setUps.length === 0) return <p className="answer-lead">There is nothing to set up yet.</p>
  const done = setUps.filter((setUp) => isSetUpDone(ticks, name, setUp)).length
  return (
    <>
      <div className="set-ups-head">
        <div>
          <p className="answer-lead">
            {measureLine(shop)}. {done} of {setUps.length} set-ups done.
          </p>
          <p className="about">{tools.join(', ')}.</p>
        </div>
        <ClearTicks />
      </div>
      {nearTwins.length > 0 && (
        <p className="near-twins">
          <strong>Easily mixed up: </strong>
          {nearTwins
            .map(
              ({ labels: [a, b], differenceMm }) =>
                `${a} and ${b} (${formatLength(differenceMm, unit, { withUnit: true })} apart)`,
            )
            .join(', ')}
          . Write the letter on each part as it comes off the saw.
        </p>
      )}
      <ol className="set-ups">
        {setUps.map((setUp) => (
          <SetUpCard key={setUp.number} setUp={setUp} design={name} choice={choice} />
        ))}
      </ol>
    </>
  )
}

const ClearTicks = () => {
  const isEmpty = useBenchTicks((s) => Object.keys(s.done).length === 0)
  const canBringBack = useBenchTicks((s) => s.cleared !== undefined)
  const clear = useBenchTicks((s) => s.clear)
  const bringBack = useBenchTicks((s) => s.bringBack)
  if (canBringBack && isEmpty) {
    return (
      <button type="button" className="plain" onClick={bringBack}>
        Bring the ticks back
      </button>
    )
  }
  return (
    <button
      type="button"
      className="plain"
      aria-disabled={isEmpty}
      onClick={() => !isEmpty && clear()}
    >
      Untick all
    </button>
  )
}
