import type { Design } from '../design/schema.ts'
import { box } from '../geometry/box.ts'
import type { Point2, PrismSolid } from '../geometry/solid.ts'
import { lidPanelPlan, rimPlan, roofPlan } from './buildLid.ts'
import type { HiveDimensions } from './dimensions.ts'
import { UP } from './directions.ts'
import type { RoofSpace } from './hive.ts'
import { makePart, type PartSpec } from './makePart.ts'
import { FIRRING_LOW, slopeRise } from './measure.ts'
import type { Operation, Part } from './part.ts'
import { STEP } from './steps.ts'

/** Boards that close the space under the deck at its low and high side, mm thick. */
const CLOSER = 18

const roofPart = (
  spec: Omit<PartSpec, 'group' | 'motion' | 'step' | 'explode'> & {
    readonly layer: number
    readonly isSheet?: boolean
  },
) =>
  makePart({
    ...spec,
    group: 'roof',
    motion: 'lid',
    step: spec.isSheet === true ? STEP.roofSheets : STEP.roofFrame,
    explode: { direction: UP, layer: spec.layer },
  })

/** A slice of the roof's cross-section, from `z0` to `z1`, between two heights that follow the slope. */
const slice = (
  z0: number,
  z1: number,
  low: (z: number) => number,
  high: (z: number) => number,
): readonly Point2[] => [
  { u: z0, v: low(z0) },
  { u: z1, v: low(z1) },
  { u: z1, v: high(z1) },
  { u: z0, v: high(z0) },
]

const prism = (polygon: readonly Point2[], from: number, to: number): PrismSolid => ({
  kind: 'prism',
  axis: 'x',
  polygon,
  from,
  to,
})

interface Slope {
  /** Height of the deck's underside over z, and vertical thickness of the sheets on it. */
  readonly under: (z: number) => number
  readonly over: (z: number) => number
  readonly top: (z: number) => number
  readonly angle: Operation
  readonly lowIsBack: boolean
  readonly cosine: number
}

const slopeOf = (design: Design, d: HiveDimensions): Slope => {
  const { lid } = design
  const plan = rimPlan(design, d)
  const lowIsBack = lid.fall === 'back'
  const low = lowIsBack ? plan.v0 : plan.v1
  const cosine = Math.cos((lid.slopeDeg * Math.PI) / 180)
  const under = (z: number) =>
    d.lidTop + FIRRING_LOW + slopeRise(design, lowIsBack ? z - low : low - z)
  const over = (z: number) => under(z) + lid.deckMm / cosine
  return {
    under,
    over,
    top: (z) => over(z) + lid.coverMm / cosine,
    angle: { kind: 'bevel', angleDeg: lid.slopeDeg },
    lowIsBack,
    cosine,
  }
}

/** Where firrings stand along x: flush with both ends, no further apart than the lid's rails. */
const firringPlaces = (
  design: Design,
  d: HiveDimensions,
): readonly (readonly [number, number])[] => {
  const { u0, u1 } = rimPlan(design, d)
  const width = design.lid.railWidthMm
  const bays = Math.max(1, Math.ceil((u1 - u0 - width) / design.lid.railSpacingMm - 1e-9))
  const pitch = (u1 - u0 - width) / bays
  return Array.from({ length: bays + 1 }, (_, i) => {
    const from = i === bays ? u1 - width : u0 + i * pitch
    return [from, i === bays ? u1 : from + width] as const
  })
}

const buildFirrings = (design: Design, d: HiveDimensions, slope: Slope): readonly Part[] => {
  const plan = rimPlan(design, d)
  const [z0, z1] = [plan.v0 + CLOSER, plan.v1 - CLOSER]
  const flat = () => d.lidTop
  const places = firringPlaces(design, d)
  const tallest = Math.max(slope.under(z0), slope.under(z1)) - d.lidTop
  const least = Math.min(slope.under(z0), slope.under(z1)) - d.lidTop
  const taper: Operation = { kind: 'taper', from: least, to: tallest }
  const firrings = places.map(([from, to], i) =>
    roofPart({
      id: `roof/firring-${i + 1}`,
      name: 'Firring',
      material: design.lid.railMaterial,
      grain: 'z',
      solids: [prism(slice(z0, z1, flat, slope.under), from, to)],
      operations: [taper],
      fixedTo: ['lid/cladding'],
      layer: 0,
    }),
  )
  if (design.lid.insulationShape === 'equal') return firrings
  const gap = design.lid.foamClearanceMm / 2
  const wedges = places.flatMap(([, to], i) => {
    const next = places[i + 1]
    if (next === undefined) return []
    return [
      roofPart({
        id: `roof/insulation-${i + 1}`,
        name: 'Tapered insulation',
        material: design.lid.insulation,
        grain: 'none',
        solids: [prism(slice(z0 + gap, z1 - gap, flat, slope.under), to + gap, next[0] - gap)],
        operations: [taper],
        fixedTo: ['lid/cladding'],
        layer: 1,
      }),
    ]
  })
  return [...firrings, ...wedges]
}

const buildClosers = (design: Design, d: HiveDimensions, slope: Slope): readonly Part[] => {
  const plan = rimPlan(design, d)
  const flat = () => d.lidTop
  const sides = [
    { id: 'back', z: [plan.v0, plan.v0 + CLOSER] as const, isLow: slope.lowIsBack },
    { id: 'front', z: [plan.v1 - CLOSER, plan.v1] as const, isLow: !slope.lowIsBack },
  ]
  return sides.map(({ id, z, isLow }) => {
    const height = Math.max(slope.under(z[0]), slope.under(z[1])) - d.lidTop
    return roofPart({
      id: `roof/closer-${id}`,
      name: isLow ? 'Low closing board' : 'High closing board',
      material: design.lid.railMaterial,
      grain: 'x',
      solids: [prism(slice(z[0], z[1], flat, slope.under), plan.u0, plan.u1)],
      size: {
        length: plan.u1 - plan.u0,
        width: Math.max(height, CLOSER),
        thickness: Math.min(height, CLOSER),
      },
      operations: [slope.angle],
      fixedTo: ['lid/cladding'],
      layer: 0,
    })
  })
}

/** A flat lid's cover sheet lies on its top skin. */
const buildFlat = (design: Design, d: HiveDimensions): readonly Part[] => {
  const plan = roofPlan(design, d)
  return [
    roofPart({
      id: 'roof/cover-sheet',
      name: 'Cover sheet',
      material: design.lid.coverMaterial,
      grain: 'none',
      solids: box([plan.u0, plan.u1], [d.lidTop, d.roofTop], [plan.v0, plan.v1]),
      fixedTo: ['lid/cladding'],
      layer: 3,
      isSheet: true,
    }),
  ]
}

/** What lies above the insulated lid panel: the cover sheet alone, or firrings, deck and cover sheet. */
export const buildRoof = (design: Design, d: HiveDimensions): readonly Part[] => {
  if (design.lid.form === 'flat') return buildFlat(design, d)
  const slope = slopeOf(design, d)
  const plan = roofPlan(design, d)
  const along = plan.u1 - plan.u0
  const sheet = (
    id: string,
    name: string,
    material: string,
    thickness: number,
    polygon: readonly Point2[],
    fixedTo: string,
    layer: number,
  ) =>
    roofPart({
      id: `roof/${id}`,
      name,
      material,
      grain: id === 'deck' ? 'x' : 'none',
      solids: [prism(polygon, plan.u0, plan.u1)],
      size: { length: along, width: (plan.v1 - plan.v0) / slope.cosine, thickness },
      fixedTo: [fixedTo],
      layer,
      isSheet: true,
    })
  return [
    ...buildFirrings(design, d, slope),
    ...buildClosers(design, d, slope),
    sheet(
      'deck',
      'Roof deck',
      design.lid.claddingMaterial,
      design.lid.deckMm,
      slice(plan.v0, plan.v1, slope.under, slope.over),
      'roof/firring-1',
      2,
    ),
    sheet(
      'cover-sheet',
      'Cover sheet',
      design.lid.coverMaterial,
      design.lid.coverMm,
      slice(plan.v0, plan.v1, slope.over, slope.top),
      'roof/deck',
      3,
    ),
  ]
}

/** The space under the deck as the heat report needs it; undefined for a flat lid. */
export const roofSpaceOf = (design: Design, d: HiveDimensions): RoofSpace | undefined => {
  if (design.lid.form === 'flat') return undefined
  const slope = slopeOf(design, d)
  const panel = lidPanelPlan(design, d)
  const low = slope.lowIsBack ? panel.v0 : panel.v1
  const high = slope.lowIsBack ? panel.v1 : panel.v0
  const firrings = firringPlaces(design, d).reduce((sum, [from, to]) => sum + (to - from), 0)
  const plan = rimPlan(design, d)
  return {
    filling: design.lid.insulationShape === 'tapered' ? 'tapered' : 'air',
    lowHeight: slope.under(low) - d.lidTop,
    highHeight: slope.under(high) - d.lidTop,
    timberShare: firrings / (plan.u1 - plan.u0),
    deck: { material: design.lid.claddingMaterial, thickness: design.lid.deckMm },
  }
}
