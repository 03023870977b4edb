import { type Field, isOffered } from '../../design/field.ts'
import { fieldAt } from '../../design/fieldAt.ts'
import type { FieldChange, Fix } from './check.ts'

/** A fix, or undefined when one of its values lies outside what its field allows. */
export const proposeFix = (label: string, changes: readonly FieldChange[]): Fix | undefined =>
  changes.length > 0 && changes.every(isAllowed) ? { label, changes } : undefined

const isAllowed = ({ field: path, value }: FieldChange): boolean => {
  const field = fieldAt(path)
  return field !== undefined && holds(field, value)
}

const holds = (field: Field, value: FieldChange['value']): boolean => {
  switch (field.kind) {
    case 'number':
      return (
        typeof value === 'number' &&
        value >= field.min &&
        value <= field.max &&
        (!field.whole || Number.isInteger(value))
      )
    case 'choice':
      return typeof value === 'string' && Object.hasOwn(field.options, value)
    case 'flag':
      return typeof value === 'boolean'
    case 'text':
      return typeof value === 'string' && value.length <= field.maxLength
    case 'material':
      return typeof value === 'string' && isOffered(field, value)
  }
}

/** The next multiple of `step` at or above. */
export const stepUp = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step

/** The next multiple of `step` at or below. */
export const stepDown = (value: number, step: number): number =>
  Math.floor(value / step + 1e-9) * step

/** A length for a label: `7.5 mm`. */
export const mmText = (mm: number): string => `${Math.round(mm * 10) / 10} mm`
