import type { ReactNode } from 'react'
import type { RowChoice } from './useChooseRow.ts'

interface RowButtonProps {
  readonly label: string
  /** The part's name, when it is not to be read beside the letter. */
  readonly name: string
  readonly choice: RowChoice
  readonly children?: ReactNode
}

/** A letter of the cut list with what belongs to it; pressing it picks its parts out in the hive. */
export const RowButton = ({ label, name, choice, children }: RowButtonProps) => {
  const isChosen = choice.chosen.has(label)
  return (
    <button
      type="button"
      className={isChosen ? 'row-button chosen' : 'row-button'}
      aria-pressed={isChosen}
      title={`${name}: show it in the hive`}
      onClick={() => choice.toggle(label)}
    >
      <b className="letter">{label}</b>
      {children}
    </button>
  )
}
