import { useDeferredValue } from 'react'
import { type Answer, useAnswers } from '../../store/answers.ts'

/** The answer that the workshop shows; it may come a picture later than the figure under the hand. */
export const useWorkshop = (): Answer | undefined => useDeferredValue(useAnswers()).answer
