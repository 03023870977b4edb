import { PlanState } from './PlanState.tsx'
import type { PlanWords } from './planWords.ts'

interface GroupHeadProps {
  readonly title: string
  readonly note: string
  readonly price: string | undefined
  readonly words: PlanWords
}

/** The heading over the boards or sheets of one kind: what it is, what it costs, how sure that is. */
export const GroupHead = ({ title, note, price, words }: GroupHeadProps) => (
  <header className="group-head">
    <h3>{title}</h3>
    {price !== undefined && <strong className="group-price">{price}</strong>}
    <p className="about">{note}</p>
    <PlanState words={words} />
  </header>
)
