import type { FieldView } from './useFieldView.ts'

/** What the reckoning leaves out, so that nobody takes it for more than it is. */
export const LeftOut = ({ field }: { readonly field: FieldView }) => {
  const leftOut = field.answer?.leftOut ?? []
  if (leftOut.length === 0) return null
  return (
    <details className="source left-out">
      <summary>What is left out</summary>
      <ul>
        {leftOut.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </details>
  )
}
