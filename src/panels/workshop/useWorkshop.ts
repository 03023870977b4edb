import { useDeferredValue } from 'react'
import { useAnswers } from '../../store/answers.ts'
import { type WholeAnswer, wholeAnswerOf } from '../../store/wholeAnswer.ts'

/** The answer that the workshop shows; it may come a picture later than the figure under the hand. */
export const useWorkshop = (): WholeAnswer | undefined => {
  const { answer } = useDeferredValue(useAnswers())
  return answer && wholeAnswerOf(answer)
}
