import type { Operation, PartGroup } from '../../hive/part.ts'
import type { CuttingJobs, CuttingPlan } from './cutting/cuttingPlan.ts'
import type { SetUpReport } from './setups/setUpReport.ts'

/** One line of the cut list: parts that are truly identical. */
export interface CutListRow {
  /** A, B … Z, AA, AB …: written on the part. */
  readonly label: string
  readonly name: string
  readonly material: string
  readonly materialName: string
  readonly lengthMm: number
  readonly widthMm: number
  readonly thicknessMm: number
  readonly count: number
  readonly grain: 'length' | 'width' | 'none'
  /** Left or right hand, for mirrored pairs that differ; otherwise none. */
  readonly hand: 'left' | 'right' | 'none'
  readonly massKgEach: number
  readonly operations: readonly Operation[]
  readonly groups: readonly PartGroup[]
  readonly partIds: readonly string[]
  readonly bought: boolean
  /** The stock section that it can be sawn from: `from 2x4 (38.1 x 88.9)`. */
  readonly stock: string | undefined
}

/** What one material comes to. Volume for wood and foam, area for sheets, total length for rails. */
export interface MaterialTotal {
  readonly material: string
  readonly materialName: string
  readonly thicknessMm: number
  readonly pieces: number
  readonly areaM2: number
  readonly volumeM3: number
  readonly lengthM: number
  readonly massKg: number
}

/** Masses without bees and honey, kg. `empty` is the sum of the five others. */
export interface HiveMasses {
  readonly empty: number
  readonly lid: number
  readonly floor: number
  readonly body: number
  readonly frames: number
  readonly stand: number
}

export interface ShopReport {
  readonly cutList: readonly CutListRow[]
  readonly totals: readonly MaterialTotal[]
  readonly massKg: HiveMasses
  readonly partCount: number
  readonly distinctParts: number
  readonly sundries: readonly {
    readonly name: string
    readonly count: number
    readonly use: string
  }[]
  readonly cutting: CuttingJobs
  /** The boards and sheets as planned, once they are. */
  readonly plan: CuttingPlan | undefined
  readonly setUps: SetUpReport
}
