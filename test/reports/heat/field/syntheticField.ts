import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import type { Hive, Opening } from '../../../../src/hive/hive.ts'
import { computeHeat } from '../../../../src/reports/heat/computeHeat.ts'
import type { HeatFieldAnswer } from '../../../../src/reports/heat/field/heatFieldAnswer.ts'
import { INSIDE } from '../../../../src/reports/heat/field/hiveHeatModel.ts'
import type { FieldAnswer, SurfaceFaces } from '../../../../src/solvers/conduction/fieldAnswer.ts'
import type { FieldGrid } from '../../../../src/solvers/conduction/fieldGrid.ts'
import type { Triple } from '../../../../src/solvers/conduction/world.ts'
import { EXAMPLE_DESIGN, EXAMPLE_HIVE } from '../examplePanels.ts'

const built = deriveHive(DEFAULT_DESIGN)
if (built.kind === 'refused') throw new Error('The default design must be built.')

/** A cavity 1000 long, 400 wide and 300 high, with nothing in the walls. */
export const BOX: Pick<Hive, 'dimensions' | 'openings'> = {
  dimensions: {
    ...built.hive.dimensions,
    ...{ cavityLength: 1000, cavityWidth: 400, coverLedgeHeight: 300, wallTop: 320 },
  },
  openings: [],
}

/** A slot 100 wide and 10 high in the middle of the front wall, low down: 10 cm². */
export const SLOT: Opening = {
  ...{ kind: 'entrance', index: 0, wall: 'front', holes: 1, area: 1000, colony: 1 },
  tunnel: { x0: 450, x1: 550, y0: 40, y1: 50, z0: 200, z1: 260 },
}

const INNER_AREA = {
  ...{ 'front-wall': 300_000, 'back-wall': 300_000, 'left-wall': 120_000, 'right-wall': 120_000 },
  ...{ lid: 400_000, floor: 400_000 },
} as const

/** The panels of the box by ISO 6946. */
export const BOX_HEAT = computeHeat(EXAMPLE_DESIGN, {
  ...EXAMPLE_HIVE,
  panels: EXAMPLE_HIVE.panels.map((panel) => ({ ...panel, innerArea: INNER_AREA[panel.id] })),
})

export interface MadeFace {
  readonly at: Triple
  /** -x, +x, -y, +y, -z, +z as 0 to 5. */
  readonly direction: number
  readonly areaM2?: number
  readonly heatW?: number
  readonly least?: number
  readonly block?: number
  readonly environment?: number
}

/** One face for each whole panel of the box, its heat by `heatOf` the panel's number in `BOX_HEAT`. */
export const panelFaces = (heatOf: (panel: number) => number): readonly MadeFace[] =>
  [
    { at: [500, 150, 200], direction: 4, areaM2: 0.3 } as const,
    { at: [500, 150, -200], direction: 5, areaM2: 0.3 } as const,
    { at: [0, 150, 0], direction: 1, areaM2: 0.12 } as const,
    { at: [1000, 150, 0], direction: 0, areaM2: 0.12 } as const,
    { at: [500, 300, 0], direction: 2, areaM2: 0.4 } as const,
    { at: [500, 0, 0], direction: 3, areaM2: 0.4 } as const,
  ].map((face, i) => ({ ...face, heatW: heatOf(i), least: 0.9 }))

const madeSurface = (made: readonly MadeFace[]): SurfaceFaces => ({
  count: made.length,
  centreM: Float32Array.from(made.flatMap(({ at }) => at.map((mm) => mm / 1000))),
  areaM2: Float32Array.from(made, ({ areaM2 = 0.01 }) => areaM2),
  direction: Uint8Array.from(made, ({ direction }) => direction),
  environment: Uint8Array.from(made, ({ environment = INSIDE }) => environment),
  block: Uint16Array.from(made, ({ block = 0 }) => block),
  heatW: Float64Array.from(made, ({ heatW = 1 }) => heatW),
  meanC: Float32Array.from(made, ({ least = 0.9 }) => least),
  leastC: Float32Array.from(made, ({ least = 0.9 }) => least),
})

/** Everywhere as warm as the air inside. */
const EVEN: FieldGrid = {
  xM: Float64Array.of(-0.1, 0, 0.002, 0.998, 1, 1.1),
  yM: Float64Array.of(-0.1, 0, 0.3, 0.4),
  zM: Float64Array.of(-0.3, -0.2, -0.198, 0.198, 0.2, 0.3),
  temperatureC: new Float32Array(6 * 4 * 6).fill(1),
}

/** A field that has these faces; its conductance is their heat unless told. */
export const madeField = (
  made: readonly MadeFace[],
  { grid = EVEN, conductanceWPerK = sumInside(made) } = {},
): FieldAnswer => ({
  conductanceWPerK,
  lowerWPerK: 0.99 * conductanceWPerK,
  upperWPerK: 1.01 * conductanceWPerK,
  faces: madeSurface(made),
  grid,
  environmentHeatW: [-conductanceWPerK, conductanceWPerK],
  ...{ cellUnknowns: 10, vertexUnknowns: 20, cellIterations: 3, vertexIterations: 4 },
  ...{ relativeResidual: 0, hasConverged: true, bytesPerUnknown: 100, mirrorPlanes: 0 },
})

const sumInside = (made: readonly MadeFace[]): number =>
  made.reduce((sum, { heatW = 1, environment = INSIDE }) => sum + environment * heatW, 0)

/** An answer of round numbers. */
export const MADE_ANSWER: HeatFieldAnswer = {
  ...{ quality: 'full', conductanceWPerK: 2, lowerWPerK: 1.99, upperWPerK: 2.01 },
  panels: BOX_HEAT.panels.map(({ id, withRailsM2KPerW, areaM2 }) => ({
    id,
    conductanceWPerK: areaM2 / (0.8 * withRailsM2KPerW),
    resistanceM2KPerW: 0.8 * withRailsM2KPerW,
    coldestFRsi: id === 'lid' ? 0.9 : 0.7,
  })),
  shares: [
    { id: 'lid', conductanceWPerK: 0.5, share: 0.25 },
    { id: 'walls', conductanceWPerK: 1, share: 0.5 },
    { id: 'floor', conductanceWPerK: 0.5, share: 0.25 },
    { id: 'entrances', conductanceWPerK: 0, share: 0 },
  ],
  edges: [],
  coldest: { fRsi: 0.75, pointMm: [0, 0, 0], partId: 'floor/lining', place: 'on the floor' },
  warmestOutsideShare: 0.05,
  ...{
    slopeStepError: 0,
    leftOut: [],
    grid: EVEN,
    unknowns: 30,
    iterations: 7,
    hasConverged: true,
  },
}
