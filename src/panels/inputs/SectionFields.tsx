import { useDesignStore } from '../../store/designStore.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { FieldInput } from './FieldInput.tsx'
import { sectionSummary } from './sectionSummary.ts'
import { isFieldInUse, type StageSection } from './stages.ts'

/** One heading with its fields; a folded one shows its values in its heading. */
export const SectionFields = ({ section }: { readonly section: StageSection }) => {
  // A string is compared by value, so only a change of what is in use redraws the section.
  const inUse = useDesignStore((s) =>
    section.fields.filter((p) => isFieldInUse(p, s.design)).join(),
  )
  const fields = inUse === '' ? [] : inUse.split(',')
  if (fields.length === 0) return null
  const inputs = fields.map((path) => <FieldInput key={path} path={path} />)
  if (!section.folded) {
    return (
      <section className="section">
        <h3>{section.title}</h3>
        {inputs}
      </section>
    )
  }
  return (
    <details className="section folded">
      <summary>
        <h3>{section.title}</h3>
        <SectionSummary fields={fields} />
      </summary>
      {inputs}
    </details>
  )
}

const SectionSummary = ({ fields }: { readonly fields: readonly string[] }) => {
  const units = useViewStore((s) => s.units)
  const summary = useDesignStore((s) => sectionSummary(s.design, fields, units))
  return <span className="section-summary">{summary}</span>
}
