import type { SetUp } from '../../../reports/shop/setups/setUpReport.ts'
import { settingWords } from '../../../sheets/shop/settingWords.ts'
import { useBenchTicks } from '../../../store/benchTicks.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { VerdictMark } from '../../answers/VerdictMark.tsx'
import { counted } from '../measureLine.ts'
import { RowButton } from '../RowButton.tsx'
import type { RowChoice } from '../useChooseRow.ts'
import { KIND_WORDS, settingFigure } from './settingFigure.ts'
import { TickCircles } from './TickCircles.tsx'
import { isSetUpDone, tickKey } from './tickKey.ts'

interface SetUpCardProps {
  readonly setUp: SetUp
  readonly design: string
  readonly choice: RowChoice
}

/** One setting, as a card to stand at the saw: a number to be read from two steps away. */
export const SetUpCard = ({ setUp, design, choice }: SetUpCardProps) => {
  const unit = useViewStore((s) => s.units.length)
  const isDone = useBenchTicks((s) => isSetUpDone(s.done, design, setUp))
  const { number, kind, tool, setting, further, stock, rows, advice, problem, usesStopBlock } =
    setUp
  const { figure, unit: unitName } = settingFigure(setting, unit)
  return (
    <li className={isDone ? 'set-up done' : 'set-up'}>
      <h3>
        <span className="set-up-number">{number}</span>
        <span>
          {KIND_WORDS[kind]}
          <small>{tool}</small>
        </span>
        {isDone && (
          <span className="verdict ok">
            <VerdictMark verdict="ok" /> Done
          </span>
        )}
      </h3>
      <p className={figure.length > LONG ? 'set-up-figure long' : 'set-up-figure'}>
        {figure} <span className="big-unit">{unitName}</span>
      </p>
      {further.length > 0 && (
        <ul className="set-up-further">
          {further.map((second) => (
            <li key={second.name}>
              {second.name} <strong>{settingWords(second.setting, unit)}</strong>
            </li>
          ))}
        </ul>
      )}
      <p className="set-up-stock">{stock}</p>
      <ul className="set-up-rows">
        {rows.map((row) => (
          <li key={row.label}>
            <RowButton label={row.label} name={row.name} choice={choice}>
              <span>{row.name}</span>
            </RowButton>
            <TickCircles
              tick={tickKey(design, setUp, row)}
              name={`${row.label}, ${row.name}`}
              count={row.count}
            />
          </li>
        ))}
      </ul>
      {problem && (
        <p className="set-up-problem">
          <VerdictMark verdict="fix" />
          <span>
            <strong>{problem.message}</strong> {problem.wayOut}
          </span>
        </p>
      )}
      <Advice advice={advice} usesStopBlock={usesStopBlock} />
    </li>
  )
}

/** Fractions of more signs than this are set smaller. */
const LONG = 6

/** The test piece and the stop block in sight; the rest, the same on many cards, is folded. */
const Advice = ({ advice, usesStopBlock }: Pick<SetUp, 'advice' | 'usesStopBlock'>) => {
  const [first, ...more] = advice
  return (
    <div className="set-up-advice">
      {first !== undefined && <p>{first}</p>}
      {usesStopBlock && (
        <p>
          <strong>Stop block:</strong> set it once, cut all.
        </p>
      )}
      {more.length > 0 && (
        <details>
          <summary>{counted(more.length, 'more thing')} to mind</summary>
          <ul>
            {more.map((text) => (
              <li key={text}>{text}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  )
}
