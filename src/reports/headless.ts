import { materialById } from '../catalog/materials.ts'
import type { Design } from '../design/schema.ts'
import type { Point2, PrismSolid } from '../geometry/solid.ts'
import type { Axis } from '../geometry/vector.ts'
import type { Hive, Opening } from '../hive/hive.ts'
import type { Part } from '../hive/part.ts'
import { describeCutting } from './headlessCutting.ts'
import type { HeadlessReport } from './headlessSchema.ts'
import type { HeatFieldAnswer } from './heat/field/heatFieldAnswer.ts'
import { partMassKg } from './shop/partMass.ts'
import type { WholeReport } from './wholeReport.ts'

/** What became of the text of a design on its way to a report. */
export interface HeadlessInput {
  readonly design: Design
  readonly hive: Hive
  readonly report: WholeReport
  /** Anything that a reader should know about how the design was read. */
  readonly warnings: readonly string[]
}

/**
 * Everything that is known about a hive as one plain object for other programs, in the layout of
 * `headlessSchema`. Lengths are mm, all else SI. Pure: the same input gives the same object with its
 * keys in the same order.
 */
export const buildHeadlessReport = (input: HeadlessInput): HeadlessReport => {
  const { design, hive, report, warnings } = input
  const { heat, shop, keeper, checks } = report
  return {
    design,
    // The schema names every dimension, and a test holds the two together.
    dimensions: nameMm(hive.dimensions) as HeadlessReport['dimensions'],
    row: hive.row.map(({ kind, x0, x1, ...rest }) => ({ kind, ...rest, x0Mm: x0, x1Mm: x1 })),
    openings: hive.openings.map(describeOpening),
    parts: hive.parts.map(describePart),
    cavityMm: hive.cavities.map(({ colony, box }) => ({ colony, boxMm: box })),
    heat: describeHeat(heat),
    shop: describeShop(shop),
    keeper,
    checks,
    warnings: [...warnings, ...methodWarnings(report)],
  }
}

const describeShop = (shop: WholeReport['shop']): HeadlessReport['shop'] => {
  const { plan: _, cutting: __, ...rest } = shop
  return { ...rest, cutList: shop.cutList.map(describeRow), cutting: describeCutting(shop) }
}

/** The field without its grid, which is long and of use to the page alone. */
const describeHeat = ({ field, ...rest }: WholeReport['heat']): HeadlessReport['heat'] =>
  field === undefined ? rest : { ...rest, field: describeField(field) }

const describeField = ({
  grid: _,
  coldest,
  ...field
}: HeatFieldAnswer): NonNullable<HeadlessReport['heat']['field']> => {
  const { pointMm, partId, ...place } = coldest
  const [x, y, z] = pointMm
  return {
    ...field,
    coldest: { ...place, pointMm: { x, y, z }, ...(partId !== undefined && { partId }) },
  }
}

/** The same record with `Mm` behind each key; for records that hold nothing but lengths. */
const nameMm = (lengths: object): Readonly<Record<string, unknown>> =>
  Object.fromEntries(Object.entries(lengths).map(([key, value]) => [`${key}Mm`, value]))

const describeOpening = (o: Opening): HeadlessReport['openings'][number] => ({
  kind: o.kind,
  number: o.index + 1,
  wall: o.wall,
  colony: o.colony,
  holes: o.holes,
  areaMm2: o.area,
  tunnelMm: o.tunnel,
})

const describePart = (part: Part): HeadlessReport['parts'][number] => ({
  id: part.id,
  name: part.name,
  group: part.group,
  material: part.material,
  lengthMm: part.size.length,
  widthMm: part.size.width,
  thicknessMm: part.size.thickness,
  grain: part.grain,
  massKg: partMassKg(part),
  conductivityWPerMK: materialById(part.material).conductivityWPerMK,
  bought: part.bought,
  motion: part.motion,
  fixedTo: part.fixedTo,
  step: part.step,
  ...placeOf(part),
})

/** One box as `boxMm`; a part of several pieces as lists of boxes and prisms. */
const placeOf = ({ solids }: Part): Pick<HeadlessReport['parts'][number], PlaceKey> => {
  const boxes = solids.flatMap((s) => (s.kind === 'box' ? [s.box] : []))
  const prisms = solids.flatMap((s) => (s.kind === 'prism' ? [describePrism(s)] : []))
  const [only] = boxes
  if (only !== undefined && solids.length === 1) return { boxMm: only }
  return {
    ...(boxes.length > 0 && { boxesMm: boxes }),
    ...(prisms.length > 0 && { prismMm: prisms }),
  }
}

type PlaceKey = 'boxMm' | 'boxesMm' | 'prismMm'
type Prism = NonNullable<HeadlessReport['parts'][number]['prismMm']>[number]

const describePrism = ({ axis, polygon, from, to }: PrismSolid): Prism => ({
  axis,
  polygonMm: polygon.map(WORLD_POINT[axis]),
  fromMm: from,
  toMm: to,
})

/** The plane of a prism in the axes of the hive; see `Point2`. */
const WORLD_POINT: Readonly<Record<Axis, (p: Point2) => Prism['polygonMm'][number]>> = {
  x: ({ u, v }) => ({ y: v, z: u }),
  y: ({ u, v }) => ({ x: u, z: v }),
  z: ({ u, v }) => ({ x: u, y: v }),
}

type CutListRow = WholeReport['shop']['cutList'][number]
type Operation = CutListRow['operations'][number]
type DescribedRow = HeadlessReport['shop']['cutList'][number]

const describeRow = (row: CutListRow): DescribedRow => ({
  ...row,
  operations: row.operations.map(describeOperation),
})

const describeOperation = (op: Operation): DescribedRow['operations'][number] => {
  switch (op.kind) {
    case 'slot':
      return { kind: op.kind, widthMm: op.width, heightMm: op.height }
    case 'holes':
      return { kind: op.kind, diameterMm: op.diameter, count: op.count }
    case 'notch':
      return { kind: op.kind, widthMm: op.width, depthMm: op.depth, count: op.count }
    case 'bevel':
      return op
    case 'taper':
      return { kind: op.kind, fromMm: op.from, toMm: op.to }
    case 'groove':
      return { kind: op.kind, widthMm: op.width, depthMm: op.depth }
  }
}

/** ISO 6946:2007, 6.2.1: the method does not hold where the upper bound is over 1.5 times the lower. */
const MAX_BOUND_RATIO = 1.5

const methodWarnings = ({ heat }: Pick<WholeReport, 'heat'>): readonly string[] =>
  heat.panels
    .filter((p) => p.upperBoundM2KPerW > MAX_BOUND_RATIO * p.lowerBoundM2KPerW)
    .map(
      (p) =>
        `${p.name}: the two bounds of its resistance lie so far apart that ISO 6946 does not allow ` +
        'their mean. Trust only the lower bound.',
    )
