import { type FieldStage, fieldStage, STAGE_WORD } from './fieldWords.ts'
import type { FieldView } from './useFieldView.ts'

/** How far the reckoning is for the present design, as a shape with a word. */
export const FieldState = ({ field }: { readonly field: FieldView }) => {
  const stage = fieldStage(field)
  return (
    <span className="field-state">
      <StageMark stage={stage} /> {STAGE_WORD[stage]}
    </span>
  )
}

/** A ring that fills up: dashed, half, full; crossed out when there is no answer. */
const StageMark = ({ stage }: { readonly stage: FieldStage }) => (
  <svg className={`stage-mark ${stage}`} viewBox="0 0 24 24" aria-hidden="true">
    <circle className="ring" cx="12" cy="12" r="9" />
    {stage === 'preview' && <path className="fill" d="M12 3a9 9 0 0 1 0 18z" />}
    {stage === 'full' && <circle className="fill" cx="12" cy="12" r="9" />}
    {stage === 'none' && <path className="ring" d="M5.600 5.600l12.800 12.800" />}
  </svg>
)
