import { useAnswers } from '../store/answers.ts'
import { useViewStore } from '../store/viewStore.ts'
import { describeHive } from './describeHive.ts'
import { useSettled } from './useSettled.ts'

const QUIET_MS = 900

/** The hive in words for screen readers; it speaks only when the hand has been still for a while. */
export const LiveSummary = () => {
  const units = useViewStore((s) => s.units)
  const sentence = describeHive(useAnswers(), units)
  const spoken = useSettled(sentence, QUIET_MS)
  return (
    <p className="hidden-text" role="status" id="hive-in-words">
      {spoken}
    </p>
  )
}
