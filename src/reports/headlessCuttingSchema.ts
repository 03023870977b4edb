import { z } from 'zod'
import { change, names, sizeMm } from './headlessParts.ts'

const price = z.number().describe('In the currency of the design; invented where not the user’s.')

const plan = {
  price: price.optional().describe('Of all its boards or sheets; missing before it is planned.'),
  bound: price.optional().describe('Nothing can cost less.'),
  proven: z.boolean().optional().describe('The price is certainly the least.'),
  refused: z.string().optional().describe('Why there is no plan.'),
  kerfMm: z.number(),
}

const boards = z.strictObject({
  key: z.string(),
  material: z.string(),
  materialName: z.string(),
  section: z.string().describe('Trade name of the section.'),
  thicknessMm: z.number(),
  widthMm: z.number(),
  ...plan,
  plainPrice: price.optional().describe('Longest first, on the one best length of board.'),
  trimMm: z.number().describe('Cut off both ends of a board together.'),
  stocks: z.array(
    z.strictObject({ id: z.string(), lengthMm: z.number(), price, count: z.int().optional() }),
  ),
  blanks: z
    .array(
      z.strictObject({
        label: z.string(),
        ...sizeMm,
        parts: z.int(),
        across: z.int().describe('Strips from the width of a board.'),
        layers: z.int().describe('Strips from its thickness.'),
      }),
    )
    .describe('What one length of board becomes.'),
  boards: z
    .array(
      z.strictObject({
        stockId: z.string(),
        lengthMm: z.number(),
        count: z.int().describe('Boards that are cut alike.'),
        pieces: z.array(
          z.strictObject({ label: z.string(), fromMm: z.number(), lengthMm: z.number() }),
        ),
        offcutMm: z.number(),
      }),
    )
    .optional(),
})

const rectMm = {
  xMm: z.number(),
  yMm: z.number(),
  lengthMm: z.number(),
  widthMm: z.number(),
}

const sheets = z.strictObject({
  key: z.string(),
  material: z.string(),
  materialName: z.string(),
  thicknessMm: z.number(),
  ...plan,
  boundBy: z.string().optional().describe('How the bound was found.'),
  trimMm: z.number().describe('Cut off each edge of a sheet.'),
  stages: z.union([z.int(), z.literal('any')]),
  stocks: z.array(
    z.strictObject({
      id: z.string(),
      lengthMm: z.number(),
      widthMm: z.number(),
      price,
      count: z.int().optional(),
    }),
  ),
  parts: z.array(
    z.strictObject({
      label: z.string(),
      lengthMm: z.number(),
      widthMm: z.number(),
      count: z.int(),
      mayTurn: z.boolean(),
    }),
  ),
  sheets: z
    .array(
      z.strictObject({
        stockId: z.string(),
        lengthMm: z.number(),
        widthMm: z.number(),
        count: z.int().describe('Sheets that are cut alike.'),
        stages: z.int(),
        pieces: z.array(z.strictObject({ label: z.string(), ...rectMm, turned: z.boolean() })),
        cuts: z
          .array(
            z.strictObject({
              along: z.enum(['length', 'width']),
              atMm: z.number(),
              ofMm: z.strictObject(rectMm).describe('The piece that is cut.'),
              isCarry: z.boolean(),
            }),
          )
          .describe('In an order in which they can be made.'),
        offcutsMm: z.array(z.strictObject(rectMm)),
      }),
    )
    .optional(),
})

/** How boards and sheets are cut. */
export const cuttingSchema = z.strictObject({
  hives: z.int(),
  isFinal: z.boolean().describe('False while better plans are still looked for.'),
  problems: z.array(
    z.strictObject({
      labels: names,
      message: z.string(),
      remedies: z.array(z.strictObject({ text: z.string(), changes: z.array(change).optional() })),
    }),
  ),
  lumber: z.array(boards),
  sheets: z.array(sheets),
})

const kind = z.enum([
  'lumber',
  'sheet',
  'insulation',
  'covering',
  'fastener',
  'hardware',
  'adhesive',
  'finish',
  'frame',
])

export const shoppingSchema = z.strictObject({
  lines: z.array(
    z.strictObject({
      kind,
      id: z.string(),
      name: z.string(),
      detail: z.string(),
      sizeMm: z.array(z.number()).describe('Length and width of one.'),
      quantity: z.number(),
      unit: z.enum([
        'board',
        'sheet',
        'box',
        'bag',
        'each',
        'pair',
        'm',
        'm2',
        'tin',
        'tube',
        'roll',
      ]),
      onHand: z.boolean(),
      priceEach: price,
      price,
      isDemoPrice: z.boolean().describe('Invented, and not the user’s own.'),
      leftOver: z.string(),
      leftOverMm: z.array(z.array(z.number())),
      labels: names,
    }),
  ),
  hives: z.int(),
  total: price,
  perHive: price,
  currency: z.string(),
  shares: z.array(z.strictObject({ kind, price, share: z.number() })),
  usesDemoPrices: z.boolean(),
  isFinal: z.boolean(),
})
