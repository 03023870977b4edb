import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { HeatReport } from '../heat/computeHeat.ts'
import type { KeeperReport } from '../keeper/computeKeeper.ts'
import type { ShopReport } from '../shop/computeShop.ts'

/** What the value of a check is measured in; panels show it in the user's units. */
export type CheckQuantity =
  | 'length'
  | 'area'
  | 'resistance'
  | 'mass'
  | 'angle'
  | 'count'
  | 'ratio'
  | 'none'

/** Sets one field of the document; a fix is applied as one step that can be undone. */
export interface FieldChange {
  /** `cavity.endBarSpaceMm` or `openings.entrances.0.heightMm`. */
  readonly field: string
  readonly value: number | string | boolean
}

/** A few field changes that cure a check. */
export interface Fix {
  readonly label: string
  readonly changes: readonly FieldChange[]
}

/** `ok`: within the limits. `look`: worth a look. `fix`: do not build it so. */
export type Verdict = 'ok' | 'look' | 'fix'

export interface Check {
  readonly id: string
  /** Short name: `Bee space beside the frame`. */
  readonly title: string
  readonly verdict: Verdict
  readonly quantity: CheckQuantity
  /** SI or mm (area mm², resistance m²K/W); undefined when the check measures no number. */
  readonly measured: number | undefined
  readonly limits: { readonly low?: number | undefined; readonly high?: number | undefined }
  /** One sentence: why it matters for bees or keeper. */
  readonly why: string
  readonly source: string
  readonly fix: Fix | undefined
  readonly partIds: readonly string[]
}

export interface CheckContext {
  readonly design: Design
  readonly hive: Hive
  readonly heat: HeatReport
  readonly shop: ShopReport
  readonly keeper: KeeperReport
}
