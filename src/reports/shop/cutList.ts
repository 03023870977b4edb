import { materialById } from '../../catalog/materials.ts'
import { boundingBox, boxExtent } from '../../geometry/box.ts'
import { solidBounds } from '../../geometry/solid.ts'
import type { Part, PartGroup } from '../../hive/part.ts'
import { partMassKg } from './partMass.ts'
import { createShapeFinder, type PartShape } from './partShape.ts'
import { toHundredths } from './roundSize.ts'
import { rowLabel } from './rowLabel.ts'
import { rowName } from './rowName.ts'
import type { CutListRow } from './shopReport.ts'

/** Parts that one drawing serves. */
interface Batch {
  /** Everything that must be equal but the shape. */
  readonly base: string
  readonly shape: PartShape
  readonly first: Part
  readonly grain: CutListRow['grain']
  readonly parts: Part[]
}

type NewRow = Omit<CutListRow, 'label'>

/**
 * Gathers parts that are truly identical: same material, finished size to 0.01 mm, way of the grain,
 * operations and shape, however they stand in the hive. A mirror image that no turn makes equal is
 * kept apart as the other hand. Rows stand in the order of building, then by material, then by size,
 * bought things last. What each is sawn from is found later, with all rows at hand: see `nameStock`.
 * One pass over the parts.
 */
export const cutList = (parts: readonly Part[]): readonly CutListRow[] => {
  const batches = gatherBatches(parts)
  const rows = [...batches.values()].map((batch): NewRow => newRow(batch, batches))
  return rows.sort(compareRows).map((row, i) => ({ label: rowLabel(i), ...row }))
}

const gatherBatches = (parts: readonly Part[]): ReadonlyMap<string, Batch> => {
  const findShape = createShapeFinder()
  const batches = new Map<string, Batch>()
  const byId = new Map<string, Batch>()
  for (const part of parts) {
    const model = part.copyOf === undefined ? undefined : byId.get(part.copyOf)
    if (model !== undefined) {
      model.parts.push(part)
      continue
    }
    const shape = findShape(part)
    const grain = grainOf(part)
    const base = baseKey(part, grain)
    const before = batches.get(base + shape.own)
    const batch = before ?? { base, shape, first: part, grain, parts: [] }
    batch.parts.push(part)
    batches.set(base + shape.own, batch)
    byId.set(part.id, batch)
  }
  return batches
}

const baseKey = (part: Part, grain: CutListRow['grain']): string => {
  const { length, width, thickness } = part.size
  const operations =
    part.operations.length === 0
      ? ''
      : part.operations
          .map((operation) => JSON.stringify(operation))
          .sort()
          .join(',')
  return `${part.material}|${toHundredths(length)}|${toHundredths(width)}|${toHundredths(thickness)}|${grain}|${part.bought}|${operations}|`
}

/** Whether the grain runs along the part's length or its width, by its extent in the hive. */
const grainOf = (part: Part): CutListRow['grain'] => {
  if (part.grain === 'none') return 'none'
  const { length, width } = part.size
  if (length === width || part.solids.length === 0) return 'length'
  const [only] = part.solids
  const bounds =
    part.solids.length === 1 && only ? solidBounds(only) : boundingBox(part.solids.map(solidBounds))
  const extent = boxExtent(bounds, part.grain)
  return Math.abs(extent - length) <= Math.abs(extent - width) ? 'length' : 'width'
}

const newRow = (
  { base, shape, first, grain, parts }: Batch,
  batches: ReadonlyMap<string, Batch>,
): NewRow => {
  const material = materialById(first.material)
  const { length, width, thickness } = first.size
  const other = shape.own === shape.mirror ? undefined : batches.get(base + shape.mirror)
  const massKg = parts.reduce((sum, part) => sum + partMassKg(part), 0)
  return {
    name: rowName(parts.map((part) => part.name)),
    material: material.id,
    materialName: material.name,
    lengthMm: toHundredths(length) / 100,
    widthMm: toHundredths(width) / 100,
    thicknessMm: toHundredths(thickness) / 100,
    count: parts.length,
    grain,
    hand: other === undefined ? 'none' : isLeftOf(parts, other.parts) ? 'left' : 'right',
    massKgEach: massKg / parts.length,
    operations: first.operations,
    groups: [...new Set(parts.map((part) => part.group))].sort(
      (a, b) => BUILDING_ORDER[a] - BUILDING_ORDER[b],
    ),
    partIds: parts.map((part) => part.id),
    bought: first.bought,
    stock: undefined,
  }
}

/**
 * Which of a mirrored pair is the left hand: the one nearer the hive's left end; of two that stand
 * equally far along, the one nearer the back, which is at the left hand of who looks along the row
 * from the left end; of two above each other the lower.
 */
const isLeftOf = (parts: readonly Part[], others: readonly Part[]): boolean => {
  const [a, b] = [meanPlace(parts), meanPlace(others)]
  for (const axis of ['x', 'z', 'y'] as const) {
    if (toHundredths(a[axis] - b[axis]) !== 0) return a[axis] < b[axis]
  }
  return (parts[0]?.id ?? '') < (others[0]?.id ?? '')
}

const meanPlace = (parts: readonly Part[]): { readonly x: number; y: number; z: number } => {
  const sum = { x: 0, y: 0, z: 0 }
  for (const part of parts) {
    const b = boundingBox(part.solids.map(solidBounds))
    sum.x += (b.x0 + b.x1) / 2 / parts.length
    sum.y += (b.y0 + b.y1) / 2 / parts.length
    sum.z += (b.z0 + b.z1) / 2 / parts.length
  }
  return sum
}

/** The order in which a hive is built; frames, which many people buy, come near the end. */
const BUILDING_ORDER: Readonly<Record<PartGroup, number>> = {
  'front-wall': 0,
  'back-wall': 1,
  'left-wall': 2,
  'right-wall': 3,
  openings: 4,
  floor: 5,
  lid: 6,
  rim: 7,
  roof: 8,
  covers: 9,
  boards: 10,
  stand: 11,
  frames: 12,
  hardware: 13,
}

const HAND_ORDER = { left: 0, right: 1, none: 2 } as const

const firstStage = (row: NewRow): number => {
  const [group] = row.groups
  return group === undefined ? 0 : BUILDING_ORDER[group]
}

/** Rows that compare equal keep the order in which the hive names their parts. */
const compareRows = (a: NewRow, b: NewRow): number =>
  Number(a.bought) - Number(b.bought) ||
  firstStage(a) - firstStage(b) ||
  compareText(a.materialName, b.materialName) ||
  b.lengthMm - a.lengthMm ||
  b.widthMm - a.widthMm ||
  b.thicknessMm - a.thicknessMm ||
  HAND_ORDER[a.hand] - HAND_ORDER[b.hand]

// Not localeCompare: the same design must give the same order on every machine.
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
