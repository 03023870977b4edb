import { OLD_WORDS } from '../answers/warmth/fieldWords.ts'
import { PlanState } from './PlanState.tsx'
import type { CuttingView } from './useCutting.ts'

/** What is to be known before a plan is read: that there is none, that it is old, or why it failed. */
export const PlanNotice = ({ view }: { readonly view: CuttingView }) => {
  const { plan, isOld, isWorking, problem } = view
  return (
    <div role="status">
      {problem !== undefined && (
        <p className="field-problem">There is no plan for this design. {problem}</p>
      )}
      {plan === undefined && problem === undefined && (
        <PlanState
          words={{
            verdict: 'looking',
            text: isWorking ? 'The plan is being made.' : 'There is no plan yet.',
          }}
        />
      )}
      {isOld && (
        <p className="stale-note">
          The plan below is {OLD_WORDS}.{isWorking && ' A new one is being made.'}
        </p>
      )}
    </div>
  )
}
