import { materialById } from '../../../catalog/materials.ts'
import type { NumberField } from '../../../design/field.ts'
import { FIELD_TABLES } from '../../../design/fieldAt.ts'
import type { Design } from '../../../design/schema.ts'
import type { PartGroup } from '../../../hive/part.ts'
import type { Side } from './partSize.ts'
import { THICKNESS_FIELDS } from './thicknessFields.ts'

/** A length of the document that could take up what a part is off by. */
export interface AbsorbField {
  readonly path: string
  readonly field: NumberField
  readonly valueMm: number
}

/** Groups that no part of the hive hangs on. */
const NOT_OF_THE_HIVE = /^(title|site|colony|shop|keeper|stock|made)\b/

/**
 * All length fields that may move. Frames keep their published sizes unless a part of a frame is off:
 * a changed frame fits no other hive. What is bought by its thickness keeps it, unless that was measured.
 */
export const absorbFields = (
  design: Design,
  { group, side }: { readonly group: PartGroup; readonly side: Side },
): readonly AbsorbField[] => {
  const bought = side === 'thickness' ? new Set<string>() : boughtThicknesses(design)
  return lengthFields(design).filter(
    ({ path }) => !bought.has(path) && (group === 'frames' || !path.startsWith('frame.')),
  )
}

/** Every length field of the hive with its value, lists item by item. */
export const lengthFields = (design: Design): readonly AbsorbField[] =>
  [...FIELD_TABLES].flatMap(([group, fields]) =>
    NOT_OF_THE_HIVE.test(group)
      ? []
      : groupValues(design, group).flatMap(({ path, values }) =>
          Object.entries(fields).flatMap(([key, field]) => {
            const value = values[key]
            return field.kind === 'number' &&
              field.quantity === 'length' &&
              typeof value === 'number'
              ? [{ path: `${path}.${key}`, field, valueMm: value }]
              : []
          }),
        ),
  )

interface GroupValues {
  readonly path: string
  readonly values: Readonly<Record<string, unknown>>
}

const groupValues = (design: Design, group: string): readonly GroupValues[] => {
  switch (group) {
    case 'openings':
      return [{ path: group, values: { ...design.openings } }]
    case 'openings.entrances.*':
      return design.openings.entrances.map((values, i) => ({
        path: `openings.entrances.${i}`,
        values: { ...values },
      }))
    case 'openings.vents.*':
      return design.openings.vents.map((values, i) => ({
        path: `openings.vents.${i}`,
        values: { ...values },
      }))
    case 'frame':
    case 'cavity':
    case 'walls':
    case 'lid':
    case 'floor':
    case 'stand':
      return [{ path: group, values: { ...design[group] } }]
    default:
      return []
  }
}

/** Sheets, foam and metal come as thick as they are sold; wood can be planed. */
const boughtThicknesses = (design: Design): ReadonlySet<string> =>
  new Set(
    THICKNESS_FIELDS.filter((entry) => {
      const material = entry.material(design)
      return material !== undefined && materialById(material).family !== 'wood'
    }).map(({ field }) => field),
  )
