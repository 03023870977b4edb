import { z } from 'zod'
import { designSchema } from '../design/schema.ts'
import { change, names, numbersNamed, sizeMm } from './headlessParts.ts'
import { shopSchema } from './headlessShopSchema.ts'

/**
 * What the report command prints, as a schema: the contract for programs that read it. Units stand in
 * the names. `public/schema/report.schema.json` is made from this, and a test keeps the two the same.
 */
const number = (about: string) => z.number().describe(about)

const boxMm = z
  .strictObject({
    x0: z.number(),
    x1: z.number(),
    y0: z.number(),
    y1: z.number(),
    z0: z.number(),
    z1: z.number(),
  })
  .describe('mm. x runs along the row, y up, z to the front; the floor is y = 0, the middle z = 0.')

const prismMm = z
  .strictObject({
    axis: z.enum(['x', 'y', 'z']),
    polygonMm: z
      .array(
        z.strictObject({
          x: z.number().optional(),
          y: z.number().optional(),
          z: z.number().optional(),
        }),
      )
      .describe('Corners of a convex polygon, by the two axes across `axis`.'),
    fromMm: z.number(),
    toMm: z.number(),
  })
  .describe('A polygon pushed along an axis.')

const part = z.strictObject({
  id: z.string(),
  name: z.string(),
  group: z.string(),
  material: z.string().describe('Id in the catalogue of materials.'),
  ...sizeMm,
  grain: z.enum(['x', 'y', 'z', 'none']),
  massKg: z.number(),
  conductivityWPerMK: z.number(),
  bought: z.boolean(),
  motion: z.enum(['fixed', 'lid', 'floor', 'frame', 'follower', 'cover']),
  fixedTo: names.describe('Ids of the parts that it is fixed to or rests on.'),
  step: z.int().describe('Order of assembly, from 1.'),
  boxMm: boxMm.optional(),
  boxesMm: z.array(boxMm).optional().describe('For a part of several boxes, instead of `boxMm`.'),
  prismMm: z.array(prismMm).optional().describe('The sloping pieces of a part.'),
})

const DIMENSION_NAMES = [
  'cavityLengthMm',
  'cavityWidthMm',
  'cavityHeightMm',
  'frameDepthMm',
  'frameTopMm',
  'restHeightMm',
  'coverLedgeHeightMm',
  'wallTopMm',
  'restDepthMm',
  'seatWidthMm',
  'lugBearingMm',
  'lugEndClearanceMm',
  'liningThicknessMm',
  'coreThicknessMm',
  'claddingThicknessMm',
  'wallThicknessMm',
  'outerLengthMm',
  'outerWidthMm',
  'outerHeightMm',
  'floorThicknessMm',
  'lidThicknessMm',
  'lidTopMm',
  'roofTopMm',
  'roofLengthMm',
  'roofWidthMm',
  'bearerHeightMm',
  'groundHeightMm',
] as const

const dimensions = z
  .strictObject({
    ...numbersNamed(DIMENSION_NAMES),
    frameCentresMm: z.array(z.number()).describe('Middle of each frame along x.'),
  })
  .describe('Leading dimensions; heights are from the upper face of the floor.')

const rowItem = z.strictObject({
  kind: z.enum(['frame', 'follower', 'divider', 'space', 'play', 'empty']),
  number: z.int().optional(),
  x0Mm: z.number(),
  x1Mm: z.number(),
})

const opening = z.strictObject({
  kind: z.enum(['entrance', 'vent']),
  number: z.int().describe('Its place in the design, from 1.'),
  wall: z.enum(['front', 'back', 'left', 'right']),
  colony: z.int().describe('From the left, from 1; 0 when it opens into no colony.'),
  holes: z.int(),
  areaMm2: z.number(),
  tunnelMm: boxMm,
})

const panelId = z.enum(['front-wall', 'back-wall', 'left-wall', 'right-wall', 'lid', 'floor'])

const panelHeat = z.strictObject({
  id: panelId,
  name: z.string(),
  heatFlow: z.enum(['up', 'horizontal', 'down']),
  surfaceInsideM2KPerW: z.number(),
  surfaceOutsideM2KPerW: z.number(),
  betweenRailsM2KPerW: number('Through the insulation alone, with both surfaces.'),
  withRailsM2KPerW: number('ISO 6946 combined method: the mean of the two bounds.'),
  upperBoundM2KPerW: z.number(),
  lowerBoundM2KPerW: z.number(),
  relativeError: number('Largest relative error of the combined method.'),
  timberFraction: number('0 to 1, of the insulated layer.'),
  areaM2: z.number(),
  conductanceWPerK: z.number(),
  targetM2KPerW: z.number(),
  meetsTarget: z.boolean(),
  layers: z.array(
    z.strictObject({
      name: z.string(),
      thicknessMm: z.number(),
      resistanceM2KPerW: z.number(),
    }),
  ),
})

const heatField = z
  .strictObject({
    quality: z.enum(['preview', 'full']),
    conductanceWPerK: number('Of the whole hive: with corners, edges and openings in it.'),
    lowerWPerK: number('The conductance of this model is certainly not below this.'),
    upperWPerK: number('The conductance of this model is certainly not above this.'),
    panels: z.array(
      z.strictObject({
        id: panelId,
        conductanceWPerK: number('Heat through the panel’s inner surface for each degree.'),
        resistanceM2KPerW: number('Of the panel in this hive: its inner area for each W/K.'),
        coldestFRsi: number('Temperature factor of its coldest spot away from the openings.'),
      }),
    ),
    shares: z
      .array(
        z.strictObject({
          id: z.enum(['lid', 'walls', 'floor', 'entrances']),
          conductanceWPerK: z.number(),
          share: z.number(),
        }),
      )
      .describe('Where the heat leaves the air inside; the shares add up to 1.'),
    edges: z
      .array(
        z.strictObject({
          id: z.enum(['corners', 'wall-lid', 'wall-floor', 'entrances']),
          name: z.string(),
          lengthM: number('Inside, all edges of the kind together.'),
          extraWPerK: number('Beyond what the panels lose by ISO 6946; may be negative.'),
          psiWPerMK: number('Linear thermal transmittance over inside lengths.'),
          asWallM2: number('The area of wall that would lose as much.'),
        }),
      )
      .describe('With the panels by ISO 6946, the extras add up to the conductance of the hive.'),
    coldest: z
      .strictObject({
        fRsi: number('Temperature factor: 0 as cold as outside, 1 as warm as the air inside.'),
        place: z.string(),
        pointMm: z.strictObject({ x: z.number(), y: z.number(), z: z.number() }),
        partId: z.string().optional(),
      })
      .describe('The coldest place of the inner surface, away from the openings.'),
    warmestOutsideShare: number(
      'All but 1 % of the outer skin is no warmer than this share of the way from outside to inside.',
    ),
    slopeStepError: number('Relative change when slopes are cut into twice as many steps.'),
    leftOut: names.describe('What the model leaves out.'),
    unknowns: z.int(),
    iterations: z.int(),
    hasConverged: z.boolean(),
  })
  .describe('Steady conduction through the whole hive in three dimensions.')

const heat = z.strictObject({
  panels: z.array(panelHeat),
  walls: z.strictObject({
    withRailsM2KPerW: z.number(),
    betweenRailsM2KPerW: z.number(),
    targetM2KPerW: z.number(),
    meetsTarget: z.boolean(),
  }),
  lid: panelHeat,
  floor: panelHeat,
  conductanceWPerK: number('Of the whole hive.'),
  method: z
    .enum(['panel-sum', 'field'])
    .describe('Sum over the panels, without corners and edges; or the field, with all in it.'),
  field: heatField.optional(),
  coldNightLossW: z.number(),
  months: z.array(z.strictObject({ month: z.int(), outsideC: z.number(), lossW: z.number() })),
})

const lift = z.strictObject({
  name: z.string(),
  massKg: z.number(),
  isHinged: z.literal(true).optional().describe('It turns on hinges and is not carried.'),
})

const keeper = z.strictObject({
  lifts: z.array(lift),
  heaviestLift: lift,
  honeyPerFrameKg: z.number(),
  combAreaPerFrameDm2: z.number(),
  lidForceN: z.number(),
  fullMassKg: z.number(),
  floorDropLimitDeg: z.number(),
})

const check = z.strictObject({
  id: z.string(),
  title: z.string(),
  verdict: z.enum(['ok', 'look', 'fix']),
  quantity: z
    .enum(['length', 'area', 'resistance', 'mass', 'angle', 'count', 'ratio', 'none'])
    .describe('Unit of `measured` and `limits`: mm, mm², m²K/W, kg, degree; the others have none.'),
  measured: z.number().optional(),
  limits: z.strictObject({ low: z.number().optional(), high: z.number().optional() }),
  why: z.string(),
  source: z.string(),
  fix: z
    .strictObject({
      label: z.string(),
      changes: z.array(change),
    })
    .optional(),
  partIds: names,
})

export const headlessSchema = z
  .strictObject({
    design: designSchema.describe('As it was understood, with defaults filled in.'),
    dimensions,
    row: z.array(rowItem).describe('Along x from the left; the items fill the cavity.'),
    openings: z.array(opening),
    parts: z.array(part).describe('With lid and floor closed.'),
    cavityMm: z
      .array(z.strictObject({ colony: z.int(), boxMm }))
      .describe('Air that bees can reach, by colony from the left.'),
    heat,
    shop: shopSchema,
    keeper,
    checks: z.array(check),
    warnings: names,
  })
  .describe('Combwright report: SI units and mm, the unit in each name.')

/** The report as the command prints it. */
export type HeadlessReport = Frozen<z.infer<typeof headlessSchema>>

type Frozen<T> = T extends readonly (infer U)[]
  ? readonly Frozen<U>[]
  : T extends object
    ? { readonly [K in keyof T]: Frozen<T[K]> }
    : T
