import type { SheetGroup } from '../../../reports/shop/cutting/cuttingPlan.ts'
import type { OrderedCut } from '../../../sheets/shop/cutOrder.ts'
import type {
  SheetLayout,
  SheetPiece,
  SheetRect,
  SheetStock,
} from '../../../solvers/cutting/sheets/sheetJob.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength, type LengthUnit } from '../../../units/length.ts'
import type { RowChoice } from '../useChooseRow.ts'
import { isKept } from './isKept.ts'

interface SheetPictureProps {
  readonly layout: SheetLayout
  readonly stock: SheetStock
  readonly group: SheetGroup
  readonly fullMm: number
  readonly keepMm: number
  readonly cuts: readonly OrderedCut[]
  readonly cutShown: number | undefined
  readonly choice: RowChoice
}

/** A sheet to scale, its length across the page; the list below it says the same in words. */
export const SheetPicture = (props: SheetPictureProps) => {
  const { layout, stock, group, fullMm, keepMm, cuts, cutShown, choice } = props
  const unit = useViewStore((s) => s.units.length)
  const { lengthMm, widthMm } = stock
  const place = (rect: SheetRect) => ({
    left: `${(rect.xMm / lengthMm) * 100}%`,
    bottom: `${(rect.yMm / widthMm) * 100}%`,
    width: `${(rect.lengthMm / lengthMm) * 100}%`,
    height: `${(rect.widthMm / widthMm) * 100}%`,
  })
  return (
    <div
      className="sheet-picture"
      aria-hidden="true"
      style={{
        width: `calc(min(100%, var(--sheet-width)) * ${lengthMm / fullMm})`,
        aspectRatio: `${lengthMm} / ${widthMm}`,
      }}
      onClick={(event) => {
        const piece = event.target instanceof Element && event.target.closest('[data-label]')
        if (piece instanceof HTMLElement) choice.toggle(piece.dataset.label ?? '')
      }}
    >
      <span className="sheet-used" style={place(layout.root.rect)} />
      {layout.offcuts.map((rect) => (
        <span
          key={`${rect.xMm} ${rect.yMm}`}
          className={isKept(rect, keepMm) ? 'mark-kept' : 'mark-waste'}
          style={place(rect)}
        >
          {isKept(rect, keepMm) && <i>{`keep ${sizeOf(rect, unit)}`}</i>}
        </span>
      ))}
      {layout.pieces.map((piece) => (
        <Piece
          key={`${piece.xMm} ${piece.yMm}`}
          {...{ piece, group, unit, choice }}
          style={place(piece)}
        />
      ))}
      {cuts.map((cut) => (
        <CutLine key={cut.number} cut={cut} stock={stock} isShown={cut.number === cutShown} />
      ))}
    </div>
  )
}

interface PieceProps {
  readonly piece: SheetPiece
  readonly group: SheetGroup
  readonly unit: LengthUnit
  readonly choice: RowChoice
  readonly style: Readonly<Record<string, string>>
}

const Piece = ({ piece, group, unit, choice, style }: PieceProps) => {
  const label = group.labels[piece.part] ?? ''
  const isFixed = group.job.parts[piece.part]?.mayTurn === false
  return (
    <span
      className={choice.chosen.has(label) ? 'mark-piece chosen' : 'mark-piece'}
      data-label={label}
      style={style}
    >
      <b>{label}</b>
      <i>{sizeOf(piece, unit)}</i>
      {isFixed && <GrainArrow />}
    </span>
  )
}

/** Two heads: the grain runs along the sheet. */
const GrainArrow = () => (
  <svg className="grain" viewBox="0 0 44 12" aria-hidden="true">
    <path d="M1 6h42M8 1 1 6l7 5M36 1l7 5-7 5" />
  </svg>
)

const sizeOf = ({ lengthMm, widthMm }: SheetRect, unit: LengthUnit): string =>
  `${formatLength(lengthMm, unit)} × ${formatLength(widthMm, unit)}`

interface CutLineProps {
  readonly cut: OrderedCut
  readonly stock: SheetStock
  readonly isShown: boolean
}

/** Where the saw runs. Numbers stand at the first cuts and at the one that is looked at. */
const CutLine = ({ cut, stock, isShown }: CutLineProps) => {
  const { along, atMm, fromMm, toMm, isCarry, number } = cut
  const x = (mm: number) => `${(mm / stock.lengthMm) * 100}%`
  const y = (mm: number) => `${(mm / stock.widthMm) * 100}%`
  const style =
    along === 'length'
      ? { left: x(fromMm), bottom: y(atMm), width: x(toMm - fromMm) }
      : { left: x(atMm), bottom: y(fromMm), height: y(toMm - fromMm) }
  const share = (toMm - fromMm) / (along === 'length' ? stock.lengthMm : stock.widthMm)
  const className = ['cut-line', along, isCarry && 'carry', isShown && 'chosen']
  return (
    <span className={className.filter(Boolean).join(' ')} style={style}>
      {(isShown || share > LONG_CUT) && <em>{number}</em>}
    </span>
  )
}

/** Shorter cuts than this share of the sheet carry no number: it would hide the parts. */
const LONG_CUT = 0.45
