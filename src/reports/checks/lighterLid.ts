import { materialById } from '../../catalog/materials.ts'
import type { LidDesign } from '../../design/schema.ts'
import type { Part } from '../../hive/part.ts'
import { partMassKg } from '../shop/partMass.ts'
import type { FieldChange } from './check.ts'

/** A sheet of the lid that may be lighter without harm. */
export interface LighterSheet {
  readonly words: string
  readonly changes: readonly FieldChange[]
  readonly savedKg: number
}

const LIGHT_COVER = { material: 'aluminium-sheet', mm: 0.7 } as const
/** Thinnest plywood that holds its shape in each place, mm (from memory). */
const THIN = { deckMm: 6, claddingMm: 4, liningMm: 4 } as const

/** What could be lighter, the least missed first. Only sheets that are in the hive are offered. */
export const lighterSheets = (lid: LidDesign, parts: readonly Part[]): readonly LighterSheet[] => [
  ...lighterCover(lid, parts),
  ...thinner(lid, parts, { key: 'deckMm', id: 'roof/deck', words: 'deck' }),
  ...thinner(lid, parts, { key: 'liningMm', id: 'lid/lining', words: 'lining' }),
  ...thinner(lid, parts, { key: 'claddingMm', id: 'lid/cladding', words: 'top skin' }),
]

const lighterCover = (lid: LidDesign, parts: readonly Part[]): readonly LighterSheet[] => {
  const sheet = parts.find(({ id }) => id === 'roof/cover-sheet')
  const surface = (id: string, mm: number): number => materialById(id).densityKgPerM3 * mm
  const share =
    1 - surface(LIGHT_COVER.material, LIGHT_COVER.mm) / surface(lid.coverMaterial, lid.coverMm)
  if (sheet === undefined || share <= 0) return []
  return [
    {
      words: 'cover of 0.7 mm aluminium',
      changes: [
        { field: 'lid.coverMaterial', value: LIGHT_COVER.material },
        { field: 'lid.coverMm', value: LIGHT_COVER.mm },
      ],
      savedKg: partMassKg(sheet) * share,
    },
  ]
}

const thinner = (
  lid: LidDesign,
  parts: readonly Part[],
  {
    key,
    id,
    words,
  }: { readonly key: keyof typeof THIN; readonly id: string; readonly words: string },
): readonly LighterSheet[] => {
  const sheet = parts.find((part) => part.id === id)
  if (sheet === undefined || lid[key] <= THIN[key]) return []
  return [
    {
      words: `${words} of ${THIN[key]} mm`,
      changes: [{ field: `lid.${key}`, value: THIN[key] }],
      savedKg: partMassKg(sheet) * (1 - THIN[key] / lid[key]),
    },
  ]
}
