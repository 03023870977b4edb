import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'
import type { RowChoice } from '../useChooseRow.ts'
import type { BoardDrawing } from './boardPieces.ts'

interface BoardPictureProps {
  readonly drawing: BoardDrawing
  readonly choice: RowChoice
}

/**
 * A board from above, to scale; the list below it says the same in words, so the picture is for the
 * eye and the pointer alone.
 */
export const BoardPicture = ({ drawing, choice }: BoardPictureProps) => {
  const unit = useViewStore((s) => s.units.length)
  const percent = (share: number) => `${share * 100}%`
  return (
    <div
      className="board-picture"
      aria-hidden="true"
      style={{ width: percent(drawing.length) }}
      onClick={(event) => {
        const piece = event.target instanceof Element && event.target.closest('[data-label]')
        if (piece instanceof HTMLElement) choice.toggle(piece.dataset.label ?? '')
      }}
    >
      {drawing.marks.map(({ kind, from, length, lengthMm, blank }) => {
        const isChosen = blank !== undefined && choice.chosen.has(blank.label)
        return (
          <span
            key={from}
            className={isChosen ? `mark-${kind} chosen` : `mark-${kind}`}
            data-label={blank?.label}
            style={{
              left: percent(from / drawing.length),
              width: percent(length / drawing.length),
            }}
          >
            {blank && <b>{blank.label}</b>}
            {(blank || kind === 'kept') && <i>{formatLength(lengthMm, unit)}</i>}
          </span>
        )
      })}
    </div>
  )
}
