import { z } from 'zod'
import { assemblySchema, fastenersSchema, setUpsSchema } from './headlessBenchSchema.ts'
import { cuttingSchema, shoppingSchema } from './headlessCuttingSchema.ts'
import { names, numbersNamed, sizeMm } from './headlessParts.ts'

const operation = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('slot'), widthMm: z.number(), heightMm: z.number() }),
  z.strictObject({ kind: z.literal('holes'), diameterMm: z.number(), count: z.int() }),
  z.strictObject({
    kind: z.literal('notch'),
    widthMm: z.number(),
    depthMm: z.number(),
    count: z.int(),
  }),
  z.strictObject({ kind: z.literal('bevel'), angleDeg: z.number() }),
  z.strictObject({ kind: z.literal('taper'), fromMm: z.number(), toMm: z.number() }),
  z.strictObject({ kind: z.literal('groove'), widthMm: z.number(), depthMm: z.number() }),
])

/** What the workshop needs to know: `shop` in the report. */
export const shopSchema = z.strictObject({
  cutList: z.array(
    z.strictObject({
      label: z.string(),
      name: z.string(),
      material: z.string(),
      materialName: z.string(),
      ...sizeMm,
      count: z.int(),
      grain: z.enum(['length', 'width', 'none']),
      hand: z.enum(['left', 'right', 'none']),
      massKgEach: z.number(),
      operations: z.array(operation),
      groups: names,
      partIds: names,
      bought: z.boolean(),
      stock: z.string().optional(),
    }),
  ),
  totals: z.array(
    z.strictObject({
      material: z.string(),
      materialName: z.string(),
      thicknessMm: z.number(),
      pieces: z.int(),
      areaM2: z.number(),
      volumeM3: z.number(),
      lengthM: z.number(),
      massKg: z.number(),
    }),
  ),
  massKg: z
    .strictObject(numbersNamed(['empty', 'lid', 'floor', 'body', 'frames', 'stand']))
    .describe('Without bees and honey; `empty` is the sum of the others.'),
  partCount: z.int(),
  distinctParts: z.int(),
  sundries: z.array(z.strictObject({ name: z.string(), count: z.number(), use: z.string() })),
  cutting: cuttingSchema,
  setUps: setUpsSchema,
  fasteners: fastenersSchema,
  assembly: assemblySchema,
  shopping: shoppingSchema,
})
