import fc from 'fast-check'
import { FRAME_STANDARDS, frameStandardById } from '../../src/catalog/frameStandards.ts'
import { MATERIALS } from '../../src/catalog/materials.ts'
import type { Field, Fields, NumberField, ValuesOf } from '../../src/design/field.ts'
import { MADE_SIZE_FIELDS } from '../../src/design/madeFields.ts'
import { ENTRANCE_FIELDS, LANDING_FIELDS, VENT_FIELDS } from '../../src/design/openingFields.ts'
import { DESIGN_VERSION, type Design, GROUP_FIELDS } from '../../src/design/schema.ts'
import {
  DEFECT_FIELDS,
  GOODS_PRICE_FIELDS,
  LUMBER_STOCK_FIELDS,
  SHEET_STOCK_FIELDS,
} from '../../src/design/stockFields.ts'
import { fitDesign } from './fitDesign.ts'

/**
 * Designs that the schema accepts and a person might draw: 4 to 40 frames of every standard, all
 * options, sizes in ordinary ranges, boards inside the row and openings that fit their walls. The
 * hive may still refuse some of them, with a reason.
 */
export function arbitraryDesign(): fc.Arbitrary<Design> {
  return fc
    .record({ design: rawDesign(usual), standard: fc.constantFrom(...FRAME_STANDARDS) })
    .map(({ design, standard }) => {
      const { dimensions, spacingMm } = frameStandardById(standard.id)
      const standardId = standard.id as Design['frame']['standard']
      const frame = { ...design.frame, ...dimensions, standard: standardId, spacingMm }
      return fitDesign({ ...design, frame })
    })
}

/** Any value at all that the schema accepts, edges of the ranges and odd decimals included. */
export function arbitrarySchemaDesign(): fc.Arbitrary<Design> {
  return rawDesign(anyNumber)
}

/** Any value that `field` accepts. */
export function arbitraryValue(field: Field): fc.Arbitrary<number | string | boolean> {
  return arbitraryOf(field, anyNumber, '')
}

type NumberSource = (field: NumberField, path: string) => fc.Arbitrary<number>

// Ordinary workshop sizes (common practice); a field not named here uses its whole range.
const USUAL: Readonly<Record<string, readonly [number, number]>> = {
  'cavity.frames': [4, 40],
  'cavity.emptyPlaces': [0, 6],
  'cavity.endBarSpaceMm': [5, 10],
  'cavity.aboveSpaceMm': [4, 10],
  'cavity.belowSpaceMm': [8, 30],
  'cavity.rowEndSpaceMm': [0, 8],
  'cavity.playMm': [0, 30],
  'cavity.lugClearanceMm': [1, 4],
  'cavity.coverThicknessMm': [6, 20],
  'cavity.coverSegments': [1, 10],
  'cavity.coverLedgeMm': [10, 20],
  'cavity.followerThicknessMm': [20, 60],
  'cavity.followerSideGapMm': [1, 8],
  'cavity.followerBottomGapMm': [1, 12],
  'cavity.dividerThicknessMm': [9, 25],
  'walls.liningMm': [6, 25],
  'walls.coreMm': [30, 120],
  'walls.railWidthMm': [25, 63],
  'walls.railSpacingMm': [300, 1000],
  'walls.foamClearanceMm': [0, 3],
  'walls.claddingMm': [6, 28],
  'walls.boardWidthMm': [70, 250],
  'lid.liningMm': [4, 12],
  'lid.coreMm': [30, 160],
  'lid.railWidthMm': [20, 63],
  'lid.railSpacingMm': [300, 1000],
  'lid.foamClearanceMm': [0, 3],
  'lid.claddingMm': [4, 18],
  'lid.slopeDeg': [2, 8],
  'lid.rimDropMm': [15, 50],
  'lid.rimThicknessMm': [16, 32],
  'floor.liningMm': [6, 18],
  'floor.coreMm': [20, 100],
  'floor.railWidthMm': [25, 63],
  'floor.railSpacingMm': [300, 1000],
  'floor.foamClearanceMm': [0, 3],
  'floor.claddingMm': [4, 18],
  'floor.dropAngleDeg': [10, 60],
  'openings.entrances.bottomMm': [12, 60],
  'openings.entrances.widthMm': [20, 200],
  'openings.entrances.heightMm': [6, 20],
  'openings.vents.belowRestMm': [12, 60],
  'openings.vents.widthMm': [20, 120],
  'openings.vents.heightMm': [5, 16],
  'stand.workingHeightMm': [500, 1000],
  'shop.kerfMm': [1, 4],
  'shop.endTrimMm': [0, 60],
  'shop.sheetTrimMm': [0, 10],
  'stock.lumber.lengthMm': [900, 4800],
  'stock.lumber.price': [0, 40],
  'stock.sheets.lengthMm': [600, 2600],
  'stock.sheets.widthMm': [300, 1300],
  'stock.sheets.price': [0, 80],
}

/** A whole number of steps inside the usual range, so that shrinking gives round figures. */
const usual: NumberSource = ({ min, max, step }, path) => {
  const [low, high] = USUAL[path] ?? [min, max]
  return fc
    .integer({ min: Math.ceil(low / step), max: Math.floor(high / step) })
    .map((steps) => Math.min(Math.max(Math.round(steps * step * 1000) / 1000, min), max))
}

const anyNumber: NumberSource = (field) => {
  const { min, max, whole } = field
  if (whole) return fc.integer({ min, max })
  // Minus zero is written as 0 in JSON, so it is left out.
  const real = fc.double({ min, max, noNaN: true }).map((value) => value + 0)
  return fc.oneof(fc.constantFrom(min, max, field.default), usual(field, ''), real)
}

function rawDesign(numbers: NumberSource): fc.Arbitrary<Design> {
  const group = <F extends Fields>(fields: F, path: string) => groupOf(fields, numbers, path)
  return fc.record({
    version: fc.constant(DESIGN_VERSION),
    title: group(GROUP_FIELDS.title, 'title'),
    frame: group(GROUP_FIELDS.frame, 'frame'),
    cavity: group(GROUP_FIELDS.cavity, 'cavity'),
    walls: group(GROUP_FIELDS.walls, 'walls'),
    lid: group(GROUP_FIELDS.lid, 'lid'),
    floor: group(GROUP_FIELDS.floor, 'floor'),
    openings: fc
      .record({
        entrances: fc.array(group(ENTRANCE_FIELDS, 'openings.entrances'), { maxLength: 3 }),
        vents: fc.array(group(VENT_FIELDS, 'openings.vents'), { maxLength: 2 }),
        landing: group(LANDING_FIELDS, 'openings'),
      })
      .map(({ entrances, vents, landing }) => ({ entrances, vents, ...landing })),
    stand: group(GROUP_FIELDS.stand, 'stand'),
    site: group(GROUP_FIELDS.site, 'site'),
    colony: group(GROUP_FIELDS.colony, 'colony'),
    shop: group(GROUP_FIELDS.shop, 'shop'),
    keeper: group(GROUP_FIELDS.keeper, 'keeper'),
    stock: fc.record({
      lumber: fc.array(
        fc
          .record({
            board: group(LUMBER_STOCK_FIELDS, 'stock.lumber'),
            defects: fc.array(group(DEFECT_FIELDS, 'stock.lumber.defects'), { maxLength: 2 }),
          })
          .map(({ board, defects }) => ({ ...board, defects })),
        { maxLength: 3 },
      ),
      sheets: fc.array(group(SHEET_STOCK_FIELDS, 'stock.sheets'), { maxLength: 2 }),
      goods: fc.array(group(GOODS_PRICE_FIELDS, 'stock.goods'), { maxLength: 2 }),
    }),
    made: fc.array(group(MADE_SIZE_FIELDS, 'made'), { maxLength: 2 }),
  })
}

function groupOf<F extends Fields>(
  fields: F,
  numbers: NumberSource,
  path: string,
): fc.Arbitrary<ValuesOf<F>> {
  const values = Object.entries(fields).map(([key, field]) => [
    key,
    arbitraryOf(field, numbers, `${path}.${key}`),
  ])
  // The entries are made from F itself, so the record has exactly F's keys and values.
  return fc.record(Object.fromEntries(values)) as unknown as fc.Arbitrary<ValuesOf<F>>
}

function arbitraryOf(
  field: Field,
  numbers: NumberSource,
  path: string,
): fc.Arbitrary<number | string | boolean> {
  switch (field.kind) {
    case 'number':
      return numbers(field, path)
    case 'choice':
      return fc.constantFrom(...Object.keys(field.options))
    case 'flag':
      return fc.boolean()
    case 'text':
      // Letters of many scripts, no lone surrogates; the limit counts UTF-16 units.
      return fc
        .string({ unit: 'grapheme', maxLength: 12 })
        .map((written) => (written.length > field.maxLength ? '' : written))
    case 'material': {
      const offered = MATERIALS.filter((row) => field.families.includes(row.family))
      return fc.constantFrom(...offered.map((row) => row.id))
    }
  }
}
