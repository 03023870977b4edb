import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { HeatComparisons } from '../../reports/heat/field/heatComparisons.ts'
import type { WholeReport } from '../../reports/wholeReport.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import type { DrawingItem } from '../drawing.ts'
import type { Typesetter } from '../type/typesetter.ts'
import type { Paper } from './paper.ts'

/** One page before its frame and title block are drawn. */
export interface SheetPage {
  /** What the page shows, for the title block and the bookmarks. */
  readonly title: string
  /** `1:10`, or `1:10 and 1:20`; empty where nothing is to scale. */
  readonly scale: string
  readonly items: readonly DrawingItem[]
}

/** A picture of the hive made elsewhere. */
export interface SheetPicture {
  readonly bytes: Uint8Array
  readonly widthPx: number
  readonly heightPx: number
  readonly kind: 'jpeg' | 'png'
}

/** Everything that the pages are made from. */
export interface SheetContent {
  readonly design: Design
  readonly hive: Hive
  readonly report: WholeReport
  readonly units: UnitPreferences
  readonly date: string
  readonly picture: SheetPicture | undefined
  /** The steps of assembly, by their order; those without a picture are told in words. */
  readonly stepPictures: readonly (SheetPicture | undefined)[]
  /** Other ways to build and other homes; shown only beside the heat in three dimensions. */
  readonly comparisons: HeatComparisons | undefined
  readonly paper: Paper
  readonly type: Typesetter
}
