import type { Design } from '../../design/schema.ts'
import { useDesignStore } from '../../store/designStore.ts'

export type FieldValue = number | string | boolean

/** The value at a path such as `walls.coreMm` or `openings.vents.0.widthMm`, if there is one. */
export const fieldValue = (design: Design, path: string): FieldValue | undefined => {
  let place: unknown = design
  for (const key of path.split('.')) {
    if (typeof place !== 'object' || place === null) return undefined
    place = (place as Readonly<Record<string, unknown>>)[key]
  }
  return isFieldValue(place) ? place : undefined
}

/** Follows one field of the document; a change elsewhere does not redraw the caller. */
export const useFieldValue = (path: string): FieldValue | undefined =>
  useDesignStore((s) => fieldValue(s.design, path))

const isFieldValue = (value: unknown): value is FieldValue =>
  typeof value === 'number' || typeof value === 'string' || typeof value === 'boolean'
