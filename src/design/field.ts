import { z } from 'zod'
import { hasMaterial, materialById } from '../catalog/materials.ts'

/** What a number measures; it decides how the number is shown and typed, never how it is stored. */
export type Quantity =
  | 'length'
  | 'count'
  | 'angle'
  | 'temperature'
  | 'percent'
  | 'mass'
  | 'resistance'
  | 'money'

/**
 * A number with its range. The unit stored is mm, degree, °C, %, kg, m²K/W or the user's
 * currency by `quantity`.
 */
export interface NumberField {
  readonly kind: 'number'
  readonly quantity: Quantity
  readonly label: string
  readonly meaning: string
  readonly min: number
  readonly max: number
  /** One press of a step button, in the stored unit. */
  readonly step: number
  readonly default: number
  readonly whole: boolean
}

export interface ChoiceField<C extends string = string> {
  readonly kind: 'choice'
  readonly label: string
  readonly meaning: string
  readonly options: Readonly<Record<C, string>>
  readonly default: NoInfer<C>
}

export interface FlagField {
  readonly kind: 'flag'
  readonly label: string
  readonly meaning: string
  readonly default: boolean
}

export interface TextField {
  readonly kind: 'text'
  readonly label: string
  readonly meaning: string
  readonly maxLength: number
  readonly default: string
}

/** A material's id from the catalogue; `families` limits what is offered. */
export interface MaterialField {
  readonly kind: 'material'
  readonly label: string
  readonly meaning: string
  readonly families: readonly string[]
  readonly default: string
}

export type Field = NumberField | ChoiceField | FlagField | TextField | MaterialField
export type Fields = Readonly<Record<string, Field>>

/** The value that a field holds in the document. */
export type ValueOf<F extends Field> = F extends NumberField
  ? number
  : F extends ChoiceField<infer C>
    ? C
    : F extends FlagField
      ? boolean
      : string

export type ValuesOf<F extends Fields> = { readonly [K in keyof F]: ValueOf<F[K]> }

type NumberSpec = Omit<NumberField, 'kind' | 'quantity' | 'whole' | 'step'> & { step?: number }

const numberField = (quantity: Quantity, step: number, whole = false) => {
  return (spec: NumberSpec): NumberField => ({ kind: 'number', quantity, whole, step, ...spec })
}

export const length = numberField('length', 1)
export const count = numberField('count', 1, true)
export const angle = numberField('angle', 1)
export const temperature = numberField('temperature', 1)
export const percent = numberField('percent', 1)
export const mass = numberField('mass', 0.5)
export const resistance = numberField('resistance', 0.1)
export const money = numberField('money', 0.5)

export const choice = <C extends string>(spec: Omit<ChoiceField<C>, 'kind'>): ChoiceField<C> => ({
  kind: 'choice',
  ...spec,
})
export const flag = (spec: Omit<FlagField, 'kind'>): FlagField => ({ kind: 'flag', ...spec })
export const text = (spec: Omit<TextField, 'kind'>): TextField => ({ kind: 'text', ...spec })
export const material = (spec: Omit<MaterialField, 'kind'>): MaterialField => ({
  kind: 'material',
  ...spec,
})

const numberSchema = ({ min, max, whole }: NumberField) => {
  const bounded = z.number().min(min).max(max)
  return whole ? bounded.int() : bounded
}

/** Whether the catalogue has this material and the field may hold it. */
export const isOffered = (field: MaterialField, id: string): boolean =>
  hasMaterial(id) && field.families.includes(materialById(id).family)

const fieldSchema = (field: Field): z.ZodType => {
  switch (field.kind) {
    case 'number':
      return numberSchema(field)
    case 'choice':
      return z.enum(Object.keys(field.options))
    case 'flag':
      return z.boolean()
    case 'text':
      return z.string().max(field.maxLength)
    case 'material':
      return z.string().refine((id) => isOffered(field, id), { error: 'unknown material' })
  }
}

/**
 * The zod schema of one group and of the lists in it; unknown keys are refused, so a misspelt field is
 * never lost silently.
 */
export const groupSchema = <F extends Fields, L extends z.ZodRawShape = Record<never, never>>(
  fields: F,
  lists?: L,
): z.ZodType<ValuesOf<F> & { readonly [K in keyof L]: z.output<L[K]> }> =>
  z.strictObject({
    ...Object.fromEntries(Object.entries(fields).map(([key, field]) => [key, fieldSchema(field)])),
    ...lists,
    // The entries are made from F and L themselves, so the object has exactly their keys and values.
  }) as unknown as z.ZodType<ValuesOf<F> & { readonly [K in keyof L]: z.output<L[K]> }>

/** Every field's default value. */
export const defaultsOf = <F extends Fields>(fields: F): ValuesOf<F> =>
  Object.fromEntries(
    Object.entries(fields).map(([key, field]) => [key, field.default]),
  ) as ValuesOf<F>
