import { z } from 'zod'
import { names } from './headlessParts.ts'

const setting = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('length'), mm: z.number() }),
  z.strictObject({ kind: z.literal('angle'), deg: z.number() }),
  z.strictObject({ kind: z.literal('diameter'), mm: z.number() }),
])

const countedRow = z.strictObject({ label: z.string(), name: z.string(), count: z.number() })

/** One setting of one tool at a time, in the order of work. */
export const setUpsSchema = z.strictObject({
  setUps: z.array(
    z.strictObject({
      number: z.int(),
      kind: z.enum([
        'break-down',
        'rip',
        'resaw',
        'plane',
        'crosscut',
        'bevel',
        'taper',
        'groove',
        'notch',
        'slot',
        'drill',
        'knife',
        'snips',
      ]),
      tool: z.string(),
      setting,
      further: z.array(z.strictObject({ name: z.string(), setting })),
      stock: z.string(),
      materialName: z.string(),
      rows: z.array(countedRow),
      usesStopBlock: z.boolean(),
      advice: names,
      problem: z.strictObject({ message: z.string(), wayOut: z.string() }).optional(),
    }),
  ),
  partCount: z.int(),
  tools: names,
  nearTwins: z.array(
    z.strictObject({ labels: z.tuple([z.string(), z.string()]), differenceMm: z.number() }),
  ),
})

const fastener = z.strictObject({
  kind: z.enum(['screw', 'nail', 'peg', 'staple']),
  diameterMm: z.number(),
  lengthMm: z.number(),
  finish: z.string(),
})

const pair = z.tuple([z.string(), z.string()])

/** Screws and nails by joint, and what else holds, hangs and protects the hive. */
export const fastenersSchema = z.strictObject({
  fastenings: z.array(
    z.strictObject({
      joint: z.string(),
      step: z.int().describe('Stage of building, as `step` of the parts.'),
      labels: pair.describe('Row with the head, row with the point.'),
      partIds: names,
      fastener,
      count: z.int(),
      layers: z.array(z.strictObject({ name: z.string(), thicknessMm: z.number() })),
      penetrationMm: z.number(),
      coverMm: z.number().describe('Left of the last layer behind the point.'),
      spacingMm: z.number(),
      edgeMm: z.number(),
      endMm: z.number(),
      pilotMm: z.number(),
      clearanceHoleMm: z.number(),
      glue: z.boolean(),
      rule: z.string(),
      source: z.string(),
      warning: z.string().optional(),
    }),
  ),
  totals: z.array(z.strictObject({ fastener, count: z.number(), spare: z.number() })),
  hardware: z.array(
    z.strictObject({
      id: z.string(),
      name: z.string(),
      count: z.number(),
      unit: z.enum(['each', 'pair', 'm', 'm2']),
      use: z.string(),
      detail: z.string(),
      source: z.string(),
    }),
  ),
  adhesives: z.array(
    z.strictObject({
      id: z.string(),
      name: z.string(),
      use: z.string(),
      quantity: z.number(),
      unit: z.enum(['ml', 'g', 'm']),
      why: z.string(),
      source: z.string(),
      partIds: names,
    }),
  ),
  finish: z
    .strictObject({
      id: z.string(),
      name: z.string(),
      areaM2: z.number(),
      coats: z.int(),
      litres: z.number(),
      curingDays: z.number(),
      advice: z.string(),
      source: z.string(),
    })
    .optional(),
  drillBitsMm: z.array(z.number()),
  loose: z.array(
    z.strictObject({
      joint: z.string(),
      labels: pair,
      partIds: names,
      glue: z.boolean(),
      message: z.string(),
    }),
  ),
})

/** The hive put together step by step, and what is written on the parts. */
export const assemblySchema = z.strictObject({
  steps: z.array(
    z.strictObject({
      number: z.int(),
      stage: z.int().describe('What `step` of parts and fastenings names.'),
      title: z.string(),
      partIds: names,
      worksOn: names,
      pictured: names,
      unit: z.enum(['body', 'floor', 'lid', 'frames']),
      scope: z.enum(['unit', 'hive', 'open-hive']),
      rows: z.array(countedRow),
      instructions: names,
      fastenings: z.array(z.int()).describe('Indices into the fastenings.'),
      diagonals: z.array(
        z.strictObject({ name: z.string(), lengthMm: z.number(), limitMm: z.number() }),
      ),
      liftKg: z.number(),
      secondPerson: z.string().optional(),
      cautions: names,
      minutes: z.tuple([z.number(), z.number()]),
      waitHours: z.number(),
      view: z.enum(['three-quarter', 'front', 'side', 'top', 'inside', 'underneath']),
    }),
  ),
  labels: z.array(
    z.strictObject({
      label: z.string(),
      name: z.string(),
      count: z.int(),
      up: z.enum(['long edge', 'end', 'face', 'none']),
      outside: z.string(),
      hand: z.enum(['left', 'right', 'none']),
      mates: names,
      groups: names,
    }),
  ),
  squareRule: z.string(),
  timeRule: z.string(),
})
