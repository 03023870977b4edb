import type { Field } from './field.ts'
import { unitOf } from './unitOf.ts'

const LONGEST_SHOWN = 40

/**
 * A value from a file in words: `900 mm`, the text in quotes, `a list of 9`, `empty`. Long texts are
 * shortened. With a field, numbers carry its unit and text in a number's place is called text.
 */
export function describeValue(value: unknown, field?: Field): string {
  if (typeof value === 'number') return `${value}${field ? unitOf(field) : ''}`
  if (typeof value === 'string') return describeText(value, field)
  if (typeof value === 'boolean') return String(value)
  if (Array.isArray(value)) return `a list of ${value.length}`
  return typeof value === 'object' && value !== null ? 'a group of fields' : 'empty'
}

function describeText(text: string, field: Field | undefined): string {
  if (field?.kind === 'text') return `a text of ${text.length} characters`
  const quoted = JSON.stringify(
    text.length > LONGEST_SHOWN ? `${text.slice(0, LONGEST_SHOWN)}…` : text,
  )
  return field?.kind === 'number' || field?.kind === 'flag' ? `the text ${quoted}` : quoted
}
