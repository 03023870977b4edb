import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'

/** A length field that holds the thickness of a board or sheet as it is bought. */
export interface ThicknessField {
  readonly field: string
  /** The material that it is the thickness of; undefined while nothing is made of it. */
  readonly material: (design: Design) => string | undefined
  /** The field's value less the thickness of the board, mm. */
  readonly extraMm: number
  readonly valueMm: (design: Design) => number
}

/** The wood that frames and their like are made of, and that of the stand; see the hive's builders. */
const FRAME_WOOD = 'pine'
const STAND_WOOD = 'larch'
/** An insulated follower has two sheets of 6 mm around its insulation. */
const FOLLOWER_SKINS_MM = 12

const PANELS = ['walls', 'lid', 'floor'] as const

const panelFields = PANELS.flatMap((panel): readonly ThicknessField[] => [
  plain(
    `${panel}.liningMm`,
    (d) => d[panel].liningMaterial,
    (d) => d[panel].liningMm,
  ),
  plain(
    `${panel}.coreMm`,
    (d) => (materialById(d[panel].insulation).form === 'loose' ? undefined : d[panel].insulation),
    (d) => d[panel].coreMm,
  ),
  plain(
    `${panel}.claddingMm`,
    (d) => d[panel].claddingMaterial,
    (d) => d[panel].claddingMm,
  ),
  // A rail lies in its board with its depth across; a wider rail than deep is cut to the insulation.
  plain(
    `${panel}.railWidthMm`,
    (d) => (d[panel].railWidthMm <= d[panel].coreMm ? d[panel].railMaterial : undefined),
    (d) => d[panel].railWidthMm,
  ),
])

/** Every field whose value is read off a board with a calliper. */
export const THICKNESS_FIELDS: readonly ThicknessField[] = [
  ...panelFields,
  plain(
    'lid.deckMm',
    (d) => (d.lid.form === 'sloped' ? d.lid.claddingMaterial : undefined),
    (d) => d.lid.deckMm,
  ),
  plain(
    'lid.coverMm',
    (d) => d.lid.coverMaterial,
    (d) => d.lid.coverMm,
  ),
  plain(
    'lid.rimThicknessMm',
    (d) => d.lid.railMaterial,
    (d) => d.lid.rimThicknessMm,
  ),
  plain(
    'cavity.coverThicknessMm',
    (d) => (d.cavity.closure === 'touching' ? undefined : d.cavity.coverMaterial),
    (d) => d.cavity.coverThicknessMm,
  ),
  plain(
    'cavity.followerThicknessMm',
    (d) =>
      d.cavity.followers !== 'none' && d.cavity.followerForm === 'plain'
        ? d.cavity.boardMaterial
        : undefined,
    (d) => d.cavity.followerThicknessMm,
  ),
  {
    field: 'cavity.followerThicknessMm',
    material: ({ cavity, walls }) =>
      cavity.followers !== 'none' &&
      cavity.followerForm === 'insulated' &&
      materialById(walls.insulation).form !== 'loose'
        ? walls.insulation
        : undefined,
    extraMm: FOLLOWER_SKINS_MM,
    valueMm: (d) => d.cavity.followerThicknessMm,
  },
  plain(
    'cavity.dividerThicknessMm',
    (d) => (d.cavity.divider === 'fitted' ? d.cavity.boardMaterial : undefined),
    (d) => d.cavity.dividerThicknessMm,
  ),
  plain(
    'frame.topBarThicknessMm',
    (d) => (d.frame.topBarThicknessMm <= d.frame.topBarWidthMm ? FRAME_WOOD : undefined),
    (d) => d.frame.topBarThicknessMm,
  ),
  plain(
    'frame.sideBarThicknessMm',
    (d) => (d.frame.sideBarThicknessMm <= d.frame.shoulderWidthMm ? FRAME_WOOD : undefined),
    (d) => d.frame.sideBarThicknessMm,
  ),
  plain(
    'frame.bottomBarThicknessMm',
    (d) => (d.frame.bottomBarThicknessMm <= d.frame.bottomBarWidthMm ? FRAME_WOOD : undefined),
    (d) => d.frame.bottomBarThicknessMm,
  ),
  plain(
    'frame.middleBarThicknessMm',
    (d) =>
      d.frame.form === 'split' && d.frame.middleBarThicknessMm <= d.frame.sideBarWidthMm
        ? FRAME_WOOD
        : undefined,
    (d) => d.frame.middleBarThicknessMm,
  ),
  plain(
    'stand.legWidthMm',
    (d) => (d.stand.form === 'legs' ? STAND_WOOD : undefined),
    (d) => d.stand.legWidthMm,
  ),
]

function plain(
  field: string,
  material: ThicknessField['material'],
  valueMm: ThicknessField['valueMm'],
): ThicknessField {
  return { field, material, extraMm: 0, valueMm }
}
