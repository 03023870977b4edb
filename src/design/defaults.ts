import { CAVITY_FIELDS } from './cavityFields.ts'
import { defaultsOf } from './field.ts'
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
import { DESIGN_VERSION, type Design, type LumberStockDesign } from './schema.ts'
import { FLOOR_FIELDS, LID_FIELDS, WALL_FIELDS } from './shellFields.ts'
import { SHOP_FIELDS } from './shopFields.ts'
import {
  DEFECT_FIELDS,
  GOODS_PRICE_FIELDS,
  LUMBER_STOCK_FIELDS,
  SHEET_STOCK_FIELDS,
} from './stockFields.ts'

export const DEFAULT_ENTRANCE = defaultsOf(ENTRANCE_FIELDS)
export const DEFAULT_VENT = defaultsOf(VENT_FIELDS)
export const DEFAULT_DEFECT = defaultsOf(DEFECT_FIELDS)
export const DEFAULT_LUMBER: LumberStockDesign = {
  ...defaultsOf(LUMBER_STOCK_FIELDS),
  defects: [],
}
export const DEFAULT_SHEET = defaultsOf(SHEET_STOCK_FIELDS)
export const DEFAULT_GOODS = defaultsOf(GOODS_PRICE_FIELDS)
export const DEFAULT_MADE = defaultsOf(MADE_SIZE_FIELDS)

/** The design that a newcomer sees: the Quarry Lane long hive, an invented example. */
export const DEFAULT_DESIGN: Design = {
  version: DESIGN_VERSION,
  title: defaultsOf(TITLE_FIELDS),
  frame: defaultsOf(FRAME_FIELDS),
  cavity: defaultsOf(CAVITY_FIELDS),
  walls: defaultsOf(WALL_FIELDS),
  lid: defaultsOf(LID_FIELDS),
  floor: defaultsOf(FLOOR_FIELDS),
  openings: { entrances: [DEFAULT_ENTRANCE], vents: [], ...defaultsOf(LANDING_FIELDS) },
  stand: defaultsOf(STAND_FIELDS),
  site: defaultsOf(SITE_FIELDS),
  colony: defaultsOf(COLONY_FIELDS),
  shop: defaultsOf(SHOP_FIELDS),
  keeper: defaultsOf(KEEPER_FIELDS),
  stock: { lumber: [], sheets: [], goods: [] },
  made: [],
}
