import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'
import { box } from '../../../geometry/box.ts'
import type { PrismSolid } from '../../../geometry/solid.ts'
import { rimPlan, roofPlan } from '../../../hive/buildLid.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { Part } from '../../../hive/part.ts'
import { computeAirGapConductivity } from './computeAirGapConductivity.ts'
import { type HeatBlock, solid } from './heatBlock.ts'
import { partBlock, partBounds } from './partBlock.ts'
import { METAL_W_PER_MK, spreadSheet } from './spreadSheet.ts'

export interface RoofBlocks {
  readonly blocks: readonly HeatBlock[]
  /** 0 for a flat roof. */
  readonly steps: number
}

/**
 * What lies over the lid's insulated panel. A slope becomes level steps, equally wide within the rim,
 * each at its mean height, so that what lies under the deck keeps its volume; the overhang goes with the
 * outermost steps. The deck is as thick as one rise or several and the cover sheet spans the next, so
 * that neighbouring steps close on each other and share planes; both are given the conductivity that
 * keeps what they do at their true thickness.
 */
export const buildRoofBlocks = (design: Design, hive: Hive, slopeSteps: number): RoofBlocks => {
  const roof = hive.parts.filter(({ group }) => group === 'roof')
  const [deck] = roof.filter(({ id }) => id === 'roof/deck')
  const cover = roof.filter(({ id }) => id === 'roof/cover-sheet')
  const prism = deck?.solids.find((s) => s.kind === 'prism')
  if (deck === undefined || prism === undefined)
    return { blocks: cover.map((sheet) => flatSheet(design, sheet)), steps: 0 }

  const plan = rimPlan(design, hive.dimensions)
  const over = roofPlan(design, hive.dimensions)
  const under = lineUnder(prism)
  const rise = Math.abs(under(plan.v1) - under(plan.v0))
  const steps = Math.max(1, Math.min(slopeSteps, Math.floor(rise / LEAST_RISE_MM)))
  const lowest = Math.min(under(plan.v0), under(plan.v1))
  const width = (plan.v1 - plan.v0) / steps
  const supports = roof.filter(({ id }) => /^roof\/(firring|closer)-/.test(id))

  const blocks = Array.from({ length: steps }, (_, i): readonly HeatBlock[] => {
    const [z0, z1] = [plan.v0 + i * width, i === steps - 1 ? plan.v1 : plan.v0 + (i + 1) * width]
    // Counted from the low side, so that equal heights are equal numbers.
    const level = under(plan.v1) > under(plan.v0) ? i : steps - 1 - i
    const y = [hive.dimensions.lidTop, lowest + (level + 0.5) * (rise / steps)] as const
    const zs = [i === 0 ? over.v0 : z0, i === steps - 1 ? over.v1 : z1] as const
    const xs = [over.u0, over.u1] as const
    const above = layOver(design, deck, { rise: rise / steps, steps })
    let bottom = y[1]
    const layers = [deck, ...cover].map((sheet, n): HeatBlock => {
      const { thicknessMm, conductivityWPerMK } = above[n] ?? above[0]
      const placeMm = box(xs, [bottom, bottom + thicknessMm], zs)
      bottom += thicknessMm
      return { ...partBlock(sheet, 'lid', placeMm), matter: solid(conductivityWPerMK) }
    })
    return [
      {
        placeMm: box([plan.u0, plan.u1], y, [z0, z1]),
        ...roofFilling(design, roof, y[1] - y[0]),
        side: 'lid',
      },
      ...supports.flatMap((part) => {
        const b = partBounds(part)
        const z = [Math.max(b.z0, z0), Math.min(b.z1, z1)] as const
        return z[0] < z[1] ? [partBlock(part, 'lid', box([b.x0, b.x1], y, z))] : []
      }),
      ...layers,
    ]
  }).flat()
  return { blocks: blocks.map((block) => ({ ...block, isLoose: true })), steps }
}

/** Steps lower than this would cost planes and show nothing. */
const LEAST_RISE_MM = 2
/** A sheet thinner than this would fall between two planes of the grid. */
const LEAST_SHEET_MM = 6

/** Height of the deck's lower face over z. */
const lineUnder = ({ polygon }: PrismSolid): ((z: number) => number) => {
  const zs = polygon.map((p) => p.u)
  const [z0, z1] = [Math.min(...zs), Math.max(...zs)]
  const lowAt = (z: number) => Math.min(...polygon.filter((p) => p.u === z).map((p) => p.v))
  const [low0, low1] = [lowAt(z0), lowAt(z1)]
  return (z) => low0 + ((low1 - low0) * (z - z0)) / (z1 - z0)
}

type Layer = ReturnType<typeof spreadSheet>

/** Deck and cover sheet on one step. */
const layOver = (
  { lid }: Design,
  deck: Part,
  { rise, steps }: { readonly rise: number; readonly steps: number },
): readonly [Layer, Layer] => {
  const deckTo = steps === 1 ? lid.deckMm : rise * Math.ceil(lid.deckMm / rise - 1e-9)
  // A metal sheet carries heat along the roof, so neighbours overlap by half their thickness.
  const isMetal = materialById(lid.coverMaterial).conductivityWPerMK >= METAL_W_PER_MK
  const coverTo = steps === 1 ? Math.max(lid.coverMm, LEAST_SHEET_MM) : rise * (isMetal ? 2 : 1)
  return [
    spreadSheet(deck.material, lid.deckMm, deckTo),
    spreadSheet(lid.coverMaterial, lid.coverMm, coverTo),
  ]
}

const roofFilling = (
  { lid }: Design,
  roof: readonly Part[],
  heightMm: number,
): Pick<HeatBlock, 'matter' | 'partId'> =>
  lid.insulationShape === 'tapered'
    ? {
        matter: solid(materialById(lid.insulation).conductivityWPerMK),
        partId: roof.find(({ id }) => id.startsWith('roof/insulation-'))?.id,
      }
    : { matter: solid(computeAirGapConductivity(heightMm, 'up')), partId: undefined }

const flatSheet = ({ lid }: Design, sheet: Part): HeatBlock => {
  const b = partBounds(sheet)
  const { thicknessMm, conductivityWPerMK } = spreadSheet(
    sheet.material,
    lid.coverMm,
    Math.max(lid.coverMm, LEAST_SHEET_MM),
  )
  return {
    ...partBlock(sheet, 'lid', { ...b, y1: b.y0 + thicknessMm }),
    matter: solid(conductivityWPerMK),
  }
}
