import { ADHESIVES, type AdhesiveRow, FORBIDDEN_ADHESIVES } from '../../../catalog/adhesives.ts'
import { materialById } from '../../../catalog/materials.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { Part } from '../../../hive/part.ts'
import type { AdhesiveItem } from './fastenerReport.ts'
import type { Members } from './members.ts'

/** Glue, sealant and tape of one hive. `glued` are the parts of all wood joints, with their area. */
export const adhesiveList = (
  hive: Hive,
  members: Members,
  glued: { readonly areaMm2: number; readonly partIds: readonly string[] },
): readonly AdhesiveItem[] => {
  const foam = members.all.filter(({ part }) => isFoam(part.material)).map((m) => m.part)
  const foil = foam.filter((part) => part.material === 'pir-foil')
  const cover = members.find('roof/cover-sheet')?.part
  const linings = members.all.filter((m) => m.part.id.endsWith('-wall/lining')).map((m) => m.part)
  const corners = (4 * hive.dimensions.restHeight) / 1000
  return [
    item(ADHESIVES.wood, glued.areaMm2 / 1e6, glued.partIds, 'All wood joints that say glue'),
    item(
      ADHESIVES.foam,
      perimeters(foam),
      idsOf(foam),
      'A bead round each foam board',
      FORBIDDEN_ADHESIVES,
    ),
    item(ADHESIVES.tape, perimeters(foil), idsOf(foil), 'Edges of foil-faced foam'),
    item(
      ADHESIVES.sealant,
      corners + (cover ? perimeters([cover]) : 0),
      idsOf(cover ? [cover, ...linings] : linings),
      'Inside corners of the walls and the edge of the cover sheet',
    ),
  ].filter((i) => i !== undefined)
}

const isFoam = (material: string): boolean => {
  const { family, surface } = materialById(material)
  return family === 'insulation' && surface.startsWith('foam')
}

/** Length of the edges of all parts, m. */
const perimeters = (parts: readonly Part[]): number =>
  parts.reduce((sum, { size }) => sum + (2 * (size.length + size.width)) / 1000, 0)

const idsOf = (parts: readonly Part[]): readonly string[] => parts.map((p) => p.id)

const item = (
  row: AdhesiveRow,
  measure: number,
  partIds: readonly string[],
  use: string,
  caution = '',
): AdhesiveItem | undefined =>
  measure > 0
    ? {
        id: row.id,
        name: row.name,
        use,
        quantity: Math.ceil(measure * row.perUnit),
        unit: row.unit,
        why: caution === '' ? row.why : `${row.why} ${caution}.`,
        source: row.source,
        partIds,
      }
    : undefined
