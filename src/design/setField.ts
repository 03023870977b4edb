import { allowedIn } from './allowedIn.ts'
import { describeValue } from './describeValue.ts'
import { type Field, isOffered, type NumberField } from './field.ts'
import { fieldAt, fieldTitle } from './fieldAt.ts'
import { isJsonObject, ownValue } from './json.ts'
import type { Design } from './schema.ts'

/** A value that a field may be given. */
export type FieldValue = number | string | boolean

export interface EditResult {
  /** The design after the edit; the very same object when nothing changed. */
  readonly design: Design
  /** Why the edit was not done as asked, for the person who asked; undefined when it was. */
  readonly limited: string | undefined
}

/**
 * Sets one field by its dotted path: `cavity.endBarSpaceMm`, `openings.entrances.0.heightMm`. A number
 * out of range becomes the nearest allowed one, and a long text is cut; `limited` says so. Any other
 * wrong value, and a path without a field, leave the design as it is. Other fields never change: see
 * `editField` for what a person's choice brings along.
 */
export function setField(design: Design, path: string, value: FieldValue): EditResult {
  const field = fieldAt(path)
  const keys = path.split('.')
  const present: unknown = keys.reduce<unknown>(ownValue, design)
  if (field === undefined || present === undefined) {
    return { design, limited: `This hive has no field called ${describeValue(path)}.` }
  }
  const accepted = acceptValue(field, value)
  if (accepted === undefined) {
    return { design, limited: `${fieldTitle(path)} must be ${allowedIn(field)}.` }
  }
  const limited = accepted === value ? undefined : explain(path, field, accepted)
  if (accepted === present) return { design, limited }
  // The path leads to a field, so only that field's value is replaced by one of its own kind.
  return { design: replaceAt(design, keys, accepted) as Design, limited }
}

/** One field and its new value, as a check's fix gives them. */
export interface FieldEdit {
  readonly field: string
  readonly value: FieldValue
}

/** Sets several fields, in order, each as by `setField`: a check's fix is one edit. */
export function applyChanges(design: Design, changes: readonly FieldEdit[]): Design {
  return changes.reduce((before, { field, value }) => setField(before, field, value).design, design)
}

/** The nearest value that the field allows; undefined when none is near. */
function acceptValue(field: Field, value: FieldValue): FieldValue | undefined {
  switch (field.kind) {
    case 'number':
      return typeof value === 'number' && !Number.isNaN(value) ? clamp(field, value) : undefined
    case 'choice':
      return typeof value === 'string' && Object.hasOwn(field.options, value) ? value : undefined
    case 'flag':
      return typeof value === 'boolean' ? value : undefined
    case 'text':
      return typeof value === 'string' ? cutText(value, field.maxLength) : undefined
    case 'material':
      return typeof value === 'string' && isOffered(field, value) ? value : undefined
  }
}

function clamp({ min, max, whole }: NumberField, value: number): number {
  const inRange = Math.min(Math.max(value, min), max)
  // Adding zero turns -0 into 0, which a saved file could not tell apart.
  return (whole ? Math.round(inRange) : inRange) + 0
}

function cutText(text: string, maxLength: number): string {
  // A cut in the middle of a character that takes two units would leave half of it.
  return text.length <= maxLength ? text : text.slice(0, maxLength).replace(/[\uD800-\uDBFF]$/, '')
}

function explain(path: string, field: Field, accepted: FieldValue): string {
  const became =
    field.kind === 'text' ? 'was cut to fit' : `became ${describeValue(accepted, field)}`
  return `${fieldTitle(path)} must be ${allowedIn(field)}, so it ${became}.`
}

function replaceAt(node: unknown, keys: readonly string[], value: FieldValue): unknown {
  const [key, ...rest] = keys
  if (key === undefined) return value
  if (Array.isArray(node)) {
    return node.map((item, i) => (i === Number(key) ? replaceAt(item, rest, value) : item))
  }
  return isJsonObject(node) ? { ...node, [key]: replaceAt(node[key], rest, value) } : node
}
