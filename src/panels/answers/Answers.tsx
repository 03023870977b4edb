import { lazy, Suspense, useDeferredValue, useState } from 'react'
import { useAnswers } from '../../store/answers.ts'
import { ChecksAnswer } from './ChecksAnswer.tsx'
import { CutListAnswer } from './CutListAnswer.tsx'
import { LiftingAnswer } from './LiftingAnswer.tsx'
import { openChecks } from './openChecks.ts'
import { type Tab, Tabs } from './Tabs.tsx'
import { WarmthAnswer } from './WarmthAnswer.tsx'

/** It comes with the first look at it; most visits begin elsewhere. */
const WorkshopAnswer = lazy(async () => ({
  default: (await import('../workshop/WorkshopAnswer.tsx')).WorkshopAnswer,
}))

/** The answers about the hive as it stands, or about the last one that could be built. */
export const Answers = () => {
  // The lists may come a picture later than the figure under the hand.
  const { answer, stale } = useDeferredValue(useAnswers())
  const [chosen, setChosen] = useState('warmth')
  if (answer === undefined) {
    return (
      <section className="answers" aria-label="Answers">
        <p className="answer-lead">The answers appear here as soon as the hive can be built.</p>
      </section>
    )
  }
  const { heat, checks, keeper, shop } = answer.report
  const open = openChecks(checks).length
  const tabs: readonly Tab[] = [
    { id: 'warmth', name: 'Warmth', content: <WarmthAnswer heat={heat} /> },
    {
      id: 'checks',
      name: open === 0 ? 'Checks' : `Checks (${open})`,
      content: <ChecksAnswer checks={checks} />,
    },
    { id: 'lifting', name: 'Lifting', content: <LiftingAnswer keeper={keeper} shop={shop} /> },
    { id: 'cut-list', name: 'Cut list', content: <CutListAnswer shop={shop} /> },
    {
      id: 'workshop',
      name: 'Workshop',
      content: (
        <Suspense fallback={<p className="answer-lead">Opening the workshop.</p>}>
          <WorkshopAnswer />
        </Suspense>
      ),
    },
  ]
  return (
    <section className={stale ? 'answers stale' : 'answers'} aria-label="Answers">
      {stale && <p className="stale-note">Of the last design that can be built</p>}
      <Tabs name="Answers" tabs={tabs} chosen={chosen} onChoose={setChosen} />
    </section>
  )
}
