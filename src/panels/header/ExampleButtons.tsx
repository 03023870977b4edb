import { EXAMPLES } from '../../design/examples.ts'
import { useOpenStore } from '../../store/openDesign.ts'

/** The examples, each of which may take the place of the design as one step that can be undone. */
export const ExampleButtons = () => {
  const offerExample = useOpenStore((s) => s.offerExample)
  return EXAMPLES.map((example) => (
    <button key={example.id} type="button" onClick={() => offerExample(example)}>
      {example.name}
      <small>{example.sentence}</small>
    </button>
  ))
}
