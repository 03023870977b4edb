import type { OrderedCut } from '../../../sheets/shop/cutOrder.ts'
import { useViewStore } from '../../../store/viewStore.ts'
import { formatLength } from '../../../units/length.ts'

interface CutStepsProps {
  readonly cuts: readonly OrderedCut[]
  readonly shown: number | undefined
  readonly onShow: (number: number | undefined) => void
}

/** The cuts of a sheet in order, each with what the fence or the guide is set to. */
export const CutSteps = ({ cuts, shown, onShow }: CutStepsProps) => {
  const unit = useViewStore((s) => s.units.length)
  const mm = (length: number) => formatLength(length, unit)
  const shopCuts = cuts.filter(({ isCarry }) => isCarry).length
  return (
    <details className="cut-steps">
      <summary>
        The cuts in order
        {shopCuts > 0 && `; the first ${shopCuts} can be made in the shop`}
      </summary>
      <ol>
        {cuts.map(({ number, along, fromEdgeMm, fromMm, toMm, isCarry }) => (
          <li key={number}>
            <button
              type="button"
              className={number === shown ? 'cut-step chosen' : 'cut-step'}
              aria-pressed={number === shown}
              onClick={() => onShow(number === shown ? undefined : number)}
            >
              <b>{number}</b>
              <strong>{mm(fromEdgeMm)}</strong>
              <span>
                {along === 'length' ? 'along' : 'across'}, a cut of {mm(toMm - fromMm)}
                {isCarry && ', shop cut'}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </details>
  )
}
