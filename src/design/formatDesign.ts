import type { Fields, ValuesOf } from './field.ts'
import { MADE_SIZE_FIELDS } from './madeFields.ts'
import { ENTRANCE_FIELDS, LANDING_FIELDS, VENT_FIELDS } from './openingFields.ts'
import { DESIGN_VERSION, type Design, GROUP_FIELDS } from './schema.ts'
import {
  DEFECT_FIELDS,
  GOODS_PRICE_FIELDS,
  LUMBER_STOCK_FIELDS,
  SHEET_STOCK_FIELDS,
} from './stockFields.ts'

/**
 * The text of a saved design: JSON with the marker first, every field in the order of the tables,
 * two spaces a level and a newline at the end. Equal designs give equal bytes.
 */
export function formatDesign(design: Design): string {
  return `${JSON.stringify({ combwright: DESIGN_VERSION, ...inOrder(design) }, undefined, 2)}\n`
}

/** The same design with its keys in the order of the tables, however it was put together. */
function inOrder(design: Design): Design {
  const { openings, stock } = design
  return {
    version: design.version,
    title: pick(GROUP_FIELDS.title, design.title),
    frame: pick(GROUP_FIELDS.frame, design.frame),
    cavity: pick(GROUP_FIELDS.cavity, design.cavity),
    walls: pick(GROUP_FIELDS.walls, design.walls),
    lid: pick(GROUP_FIELDS.lid, design.lid),
    floor: pick(GROUP_FIELDS.floor, design.floor),
    openings: {
      entrances: openings.entrances.map((entrance) => pick(ENTRANCE_FIELDS, entrance)),
      vents: openings.vents.map((vent) => pick(VENT_FIELDS, vent)),
      ...pick(LANDING_FIELDS, openings),
    },
    stand: pick(GROUP_FIELDS.stand, design.stand),
    site: pick(GROUP_FIELDS.site, design.site),
    colony: pick(GROUP_FIELDS.colony, design.colony),
    shop: pick(GROUP_FIELDS.shop, design.shop),
    keeper: pick(GROUP_FIELDS.keeper, design.keeper),
    stock: {
      lumber: stock.lumber.map((board) => ({
        ...pick(LUMBER_STOCK_FIELDS, board),
        defects: board.defects.map((defect) => pick(DEFECT_FIELDS, defect)),
      })),
      sheets: stock.sheets.map((sheet) => pick(SHEET_STOCK_FIELDS, sheet)),
      goods: stock.goods.map((article) => pick(GOODS_PRICE_FIELDS, article)),
    },
    made: design.made.map((part) => pick(MADE_SIZE_FIELDS, part)),
  }
}

function pick<F extends Fields>(fields: F, values: ValuesOf<F>): ValuesOf<F> {
  // The keys are F's own, so the picked object has exactly F's keys and values.
  return Object.fromEntries(Object.keys(fields).map((key) => [key, values[key]])) as ValuesOf<F>
}
