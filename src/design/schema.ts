import { z } from 'zod'
import { CAVITY_FIELDS } from './cavityFields.ts'
import { groupSchema, type ValuesOf } from './field.ts'
import { FRAME_FIELDS } from './frameFields.ts'
import { MADE_SIZE_FIELDS } from './madeFields.ts'
import { ENTRANCE_FIELDS, LANDING_FIELDS, VENT_FIELDS } from './openingFields.ts'
import {
  COLONY_FIELDS,
  KEEPER_FIELDS,
  SITE_FIELDS,
  STAND_FIELDS,
  TITLE_FIELDS,
} from './placeFields.ts'
import { FLOOR_FIELDS, LID_FIELDS, WALL_FIELDS } from './shellFields.ts'
import { SHOP_FIELDS } from './shopFields.ts'
import {
  DEFECT_FIELDS,
  GOODS_PRICE_FIELDS,
  LUMBER_STOCK_FIELDS,
  SHEET_STOCK_FIELDS,
} from './stockFields.ts'

/** The version that this program writes. Older ones are migrated, newer ones refused. */
export const DESIGN_VERSION = 2

export const MAX_ENTRANCES = 6
export const MAX_VENTS = 6
/** Of boards, of sheets and of prices of other goods, each. */
export const MAX_STOCK_ROWS = 60
/** Bad places on one board. */
export const MAX_DEFECTS = 8
export const MAX_MADE = 400

export type FrameDesign = ValuesOf<typeof FRAME_FIELDS>
export type CavityDesign = ValuesOf<typeof CAVITY_FIELDS>
export type WallDesign = ValuesOf<typeof WALL_FIELDS>
export type FloorDesign = ValuesOf<typeof FLOOR_FIELDS>
export type LidDesign = ValuesOf<typeof LID_FIELDS>
export type EntranceDesign = ValuesOf<typeof ENTRANCE_FIELDS>
export type VentDesign = ValuesOf<typeof VENT_FIELDS>
export type DefectDesign = ValuesOf<typeof DEFECT_FIELDS>
export type LumberStockDesign = ValuesOf<typeof LUMBER_STOCK_FIELDS> & {
  readonly defects: readonly DefectDesign[]
}
export type SheetStockDesign = ValuesOf<typeof SHEET_STOCK_FIELDS>
export type GoodsPriceDesign = ValuesOf<typeof GOODS_PRICE_FIELDS>
export type MadeSizeDesign = ValuesOf<typeof MADE_SIZE_FIELDS>

/** The whole document: plain JSON, millimetres and SI, no derived value. */
export interface Design {
  readonly version: number
  readonly title: ValuesOf<typeof TITLE_FIELDS>
  readonly frame: FrameDesign
  readonly cavity: CavityDesign
  readonly walls: WallDesign
  readonly lid: LidDesign
  readonly floor: FloorDesign
  readonly openings: {
    readonly entrances: readonly EntranceDesign[]
    readonly vents: readonly VentDesign[]
  } & ValuesOf<typeof LANDING_FIELDS>
  readonly stand: ValuesOf<typeof STAND_FIELDS>
  readonly site: ValuesOf<typeof SITE_FIELDS>
  readonly colony: ValuesOf<typeof COLONY_FIELDS>
  readonly shop: ValuesOf<typeof SHOP_FIELDS>
  readonly keeper: ValuesOf<typeof KEEPER_FIELDS>
  /** What can be had besides the catalogue, and at which price. */
  readonly stock: {
    readonly lumber: readonly LumberStockDesign[]
    readonly sheets: readonly SheetStockDesign[]
    readonly goods: readonly GoodsPriceDesign[]
  }
  /** Parts that are cut already. */
  readonly made: readonly MadeSizeDesign[]
}

/** The groups that are one record of fields each, by their key in the document. */
export const GROUP_FIELDS = {
  title: TITLE_FIELDS,
  frame: FRAME_FIELDS,
  cavity: CAVITY_FIELDS,
  walls: WALL_FIELDS,
  lid: LID_FIELDS,
  floor: FLOOR_FIELDS,
  stand: STAND_FIELDS,
  site: SITE_FIELDS,
  colony: COLONY_FIELDS,
  shop: SHOP_FIELDS,
  keeper: KEEPER_FIELDS,
} as const

export const designSchema: z.ZodType<Design> = z.strictObject({
  version: z.literal(DESIGN_VERSION),
  title: groupSchema(TITLE_FIELDS),
  frame: groupSchema(FRAME_FIELDS),
  cavity: groupSchema(CAVITY_FIELDS),
  walls: groupSchema(WALL_FIELDS),
  lid: groupSchema(LID_FIELDS),
  floor: groupSchema(FLOOR_FIELDS),
  openings: z.strictObject({
    entrances: z.array(groupSchema(ENTRANCE_FIELDS)).max(MAX_ENTRANCES),
    vents: z.array(groupSchema(VENT_FIELDS)).max(MAX_VENTS),
    landingBoards: z.boolean(),
    landingDepthMm: z
      .number()
      .min(LANDING_FIELDS.landingDepthMm.min)
      .max(LANDING_FIELDS.landingDepthMm.max),
  }),
  stand: groupSchema(STAND_FIELDS),
  site: groupSchema(SITE_FIELDS),
  colony: groupSchema(COLONY_FIELDS),
  shop: groupSchema(SHOP_FIELDS),
  keeper: groupSchema(KEEPER_FIELDS),
  stock: z.strictObject({
    lumber: z
      .array(
        groupSchema(LUMBER_STOCK_FIELDS, {
          defects: z.array(groupSchema(DEFECT_FIELDS)).max(MAX_DEFECTS),
        }),
      )
      .max(MAX_STOCK_ROWS),
    sheets: z.array(groupSchema(SHEET_STOCK_FIELDS)).max(MAX_STOCK_ROWS),
    goods: z.array(groupSchema(GOODS_PRICE_FIELDS)).max(MAX_STOCK_ROWS),
  }),
  made: z.array(groupSchema(MADE_SIZE_FIELDS)).max(MAX_MADE),
})
