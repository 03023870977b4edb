import { formatMoney } from '../../../sheets/shop/moneyWords.ts'
import type { BarPattern } from '../../../solvers/cutting/lumber/lumberJob.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import { RowButton } from '../RowButton.tsx'
import type { RowChoice } from '../useChooseRow.ts'
import { BoardPicture } from './BoardPicture.tsx'
import { countPieces, drawBoard, stripWords } from './boardPieces.ts'

interface BoardPatternProps {
  readonly pattern: BarPattern
  readonly context: Parameters<typeof drawBoard>[1]
  readonly currency: string
  readonly choice: RowChoice
}

/** Boards that are cut alike: how many, the picture, and the pieces in the order of the saw. */
export const BoardPattern = ({ pattern, context, currency, choice }: BoardPatternProps) => {
  const unit = useViewStore((s) => s.units.length)
  const mm = (length: number) => formatLength(length, unit)
  const { job, blanks, keepMm } = context
  const stock = job.stocks[pattern.stock]
  const drawing = drawBoard(pattern, context)
  const rest = pattern.offcutMm >= keepMm ? 'keep' : 'waste'
  return (
    <li className="board">
      <p className="board-head">
        <strong>{pattern.count} ×</strong> board of {mm(drawing.lengthMm)} {unit},{' '}
        {stock === undefined || stock.price === 0
          ? 'on hand'
          : `${formatMoney(stock.price, currency)} each`}
      </p>
      <BoardPicture drawing={drawing} choice={choice} />
      <ul className="board-pieces">
        {countPieces(pattern, blanks).map(({ part, count, lengthMm, blank }) => (
          <li key={part}>
            {blank && (
              <RowButton label={blank.label} name={blank.name} choice={choice}>
                <span>
                  {count} × {mm(lengthMm)}
                  {stripWords(blank) !== '' && <small> {stripWords(blank)}</small>}
                </span>
              </RowButton>
            )}
          </li>
        ))}
        {pattern.offcutMm > 0 && (
          <li className="board-rest">
            {rest} {mm(pattern.offcutMm)}
          </li>
        )}
      </ul>
    </li>
  )
}
