import { solidBounds } from '../../../src/geometry/solid.ts'
import type { Hive } from '../../../src/hive/hive.ts'
import type { HeatReport } from '../../../src/reports/heat/computeHeat.ts'
import type { HeatComparisons } from '../../../src/reports/heat/field/heatComparisons.ts'
import type { HeatFieldAnswer } from '../../../src/reports/heat/field/heatFieldAnswer.ts'
import { runWholeReports } from '../../../src/reports/wholeReport.ts'
import type { FieldGrid } from '../../../src/solvers/conduction/fieldGrid.ts'
import type { Built } from '../sheetFixture.ts'

/** A grid with the given planes in metres, and a value worked out at each crossing. */
export const fieldOf = (
  planes: {
    readonly x: readonly number[]
    readonly y: readonly number[]
    readonly z: readonly number[]
  },
  valueAt: (x: number, y: number, z: number) => number,
): FieldGrid => ({
  xM: Float64Array.from(planes.x),
  yM: Float64Array.from(planes.y),
  zM: Float64Array.from(planes.z),
  temperatureC: Float32Array.from(
    planes.z.flatMap((z) => planes.y.flatMap((y) => planes.x.map((x) => valueAt(x, y, z)))),
  ),
})

/**
 * Not a solution of anything: falls evenly from 0.92 at the inner surfaces to 0.05 at the outer ones, by
 * the distances from the room inside and from the air outside. Air has 1 inside and 0 outside.
 */
export const syntheticGrid = (hive: Hive): FieldGrid => {
  const d = hive.dimensions
  const boxes = hive.parts
    .filter((p) => p.group !== 'stand' && p.group !== 'hardware')
    .flatMap((p) => p.solids.map(solidBounds))
  const inner = {
    low: [0, 0, -d.cavityWidth / 2],
    high: [d.cavityLength, d.coverLedgeHeight, d.cavityWidth / 2],
  }
  const wall = d.wallThickness
  const outer = {
    low: [-wall, -d.floorThickness, -d.cavityWidth / 2 - wall],
    high: [d.cavityLength + wall, d.lidTop, d.cavityWidth / 2 + wall],
  }
  const value = (...metres: readonly number[]): number => {
    const p = metres.map((m) => m * 1000)
    const room = Math.hypot(
      ...p.map((c, i) => Math.max((inner.low[i] ?? 0) - c, c - (inner.high[i] ?? 0), 0)),
    )
    const air = Math.min(
      ...p.map((c, i) => Math.min(c - (outer.low[i] ?? 0), (outer.high[i] ?? 0) - c)),
    )
    if (air < -1e-9) return 0
    const isInAir = p.every(
      (c, i) => c > (inner.low[i] ?? 0) + 1e-9 && c < (inner.high[i] ?? 0) - 1e-9,
    )
    return isInAir ? 1 : 0.05 + (0.87 * air) / (air + room)
  }
  return fieldOf(
    {
      x: planesOf(boxes.flatMap((b) => [b.x0, b.x1])),
      y: planesOf(boxes.flatMap((b) => [b.y0, b.y1])),
      z: planesOf(boxes.flatMap((b) => [b.z0, b.z1])),
    },
    value,
  )
}

/** Sorted, in metres, with planes in between where two are over 12 mm apart. */
const planesOf = (mm: readonly number[]): readonly number[] => {
  const sorted = [...new Set(mm.map((v) => Math.round(v * 100) / 100))].sort((a, b) => a - b)
  return sorted.flatMap((from, i) => {
    const to = sorted[i + 1]
    if (to === undefined) return [from / 1000]
    const count = Math.ceil((to - from) / 12)
    return Array.from({ length: count }, (_, k) => (from + ((to - from) * k) / count) / 1000)
  })
}

/** An answer with invented figures: every panel resists 0.7 of what its layers say. */
const syntheticAnswer = (hive: Hive, heat: Pick<HeatReport, 'panels'>): HeatFieldAnswer => {
  const panels = heat.panels.map(({ id, areaM2, withRailsM2KPerW }) => ({
    id,
    conductanceWPerK: areaM2 / (0.7 * withRailsM2KPerW),
    resistanceM2KPerW: 0.7 * withRailsM2KPerW,
    coldestFRsi: 0.8,
  }))
  return {
    quality: 'full',
    conductanceWPerK: 1.8,
    lowerWPerK: 1.79,
    upperWPerK: 1.81,
    panels,
    shares: [
      { id: 'lid', conductanceWPerK: 0.45, share: 0.25 },
      { id: 'walls', conductanceWPerK: 0.9, share: 0.5 },
      { id: 'floor', conductanceWPerK: 0.36, share: 0.2 },
      { id: 'entrances', conductanceWPerK: 0.09, share: 0.05 },
    ],
    edges: [
      edge('corners', 'Upright corners', 0.04),
      edge('wall-lid', 'Edges where walls and lid meet', 0.12),
      edge('wall-floor', 'Edges where walls and floor meet', 0.1),
      edge('entrances', 'Entrances and vents', 0.03),
    ],
    coldest: {
      fRsi: 0.56,
      pointMm: [0, 0, 0],
      partId: 'floor/lining',
      place: 'where the front wall, the left end wall and the floor meet',
    },
    warmestOutsideShare: 0.05,
    slopeStepError: 0.001,
    leftOut: ['Air that moves through cracks is left out.', 'Bees and comb are left out.'],
    grid: syntheticGrid(hive),
    unknowns: 500_000,
    iterations: 20,
    hasConverged: true,
  }
}

const edge = (id: HeatFieldAnswer['edges'][number]['id'], name: string, extraWPerK: number) => ({
  id,
  name,
  lengthM: 2,
  extraWPerK,
  psiWPerMK: extraWPerK / 2,
  asWallM2: extraWPerK * 1.6,
})

/** Invented figures. */
export const COMPARISONS: HeatComparisons = {
  remedies: [
    {
      id: 'strip',
      name: 'A strip of foam over each rail',
      how: 'Glue a 10 mm strip of the foam to the outside of each rail before the cladding goes on.',
      conductanceWPerK: 1.7,
      savedWPerK: 0.1,
    },
    {
      id: 'staggered',
      name: 'Staggered rails',
      how: 'Two thinner rails side by side, neither as deep as the wall.',
      conductanceWPerK: 1.84,
      savedWPerK: -0.04,
    },
  ],
  baselines: [
    {
      id: 'box',
      name: 'Plain single-wall box of the same volume',
      about: 'Spruce boards 22 mm thick on all sides.',
      volumeL: 140,
      conductanceWPerK: 6.4,
      lowerWPerK: 6.38,
      upperWPerK: 6.42,
    },
  ],
}

/** A hive whose report has the invented field in it. */
export const withField = ({ design, hive, report }: Built): Built => ({
  design,
  hive,
  report: runWholeReports(design, hive, syntheticAnswer(hive, report.heat)),
})
