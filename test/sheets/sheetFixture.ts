import { readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import type { Design } from '../../src/design/schema.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import type { Hive } from '../../src/hive/hive.ts'
import type { HeatComparisons } from '../../src/reports/heat/field/heatComparisons.ts'
import type { CuttingPlan } from '../../src/reports/shop/cutting/cuttingPlan.ts'
import { planCutting } from '../../src/reports/shop/cutting/planCutting.ts'
import { runWholeReports, type WholeReport } from '../../src/reports/wholeReport.ts'
import { type PaperName, paperOf } from '../../src/sheets/pages/paper.ts'
import type { SheetContent } from '../../src/sheets/pages/sheetPage.ts'
import type { BuildSheetInput } from '../../src/sheets/pdf/buildSheet.ts'
import { readFontMetrics } from '../../src/sheets/type/fontMetrics.ts'
import { createTypesetter } from '../../src/sheets/type/typesetter.ts'
import { METRIC, type UnitPreferences } from '../../src/units/preferences.ts'

const require = createRequire(import.meta.url)

const readFont = (style: string): Uint8Array =>
  new Uint8Array(
    readFileSync(
      require.resolve(`@expo-google-fonts/ibm-plex-sans/${style}/IBMPlexSans_${style}.ttf`),
    ),
  )

export const FONTS = { regular: readFont('400Regular'), semibold: readFont('600SemiBold') }

export const TYPE = createTypesetter({
  regular: readFontMetrics(FONTS.regular),
  semibold: readFontMetrics(FONTS.semibold),
})

export interface Built {
  readonly design: Design
  readonly hive: Hive
  readonly report: WholeReport
}

/** The hive of a design that is known to build. */
export const built = (design: Design = DEFAULT_DESIGN): Built => {
  const result = deriveHive(design)
  if (result.kind !== 'built') throw new Error(JSON.stringify(result.refusals))
  return { design, hive: result.hive, report: runWholeReports(design, result.hive) }
}

/** The same with boards and sheets planned, as far as the planner's first thought goes. */
export const planned = (design: Design = DEFAULT_DESIGN): Built => {
  const { hive, report } = built(design)
  return { design, hive, report: runWholeReports(design, hive, undefined, firstPlan(report)) }
}

const firstPlan = (report: WholeReport): CuttingPlan | undefined => {
  const work = planCutting(report.shop.cutting)
  for (;;) {
    const { done, value } = work.next()
    const isWhole = value !== undefined && isPlanned(value)
    if (done === true || isWhole) return value
  }
}

const isPlanned = ({ lumber, sheets }: CuttingPlan): boolean =>
  [...lumber, ...sheets].every((result) => result.kind === 'plan')

export interface SheetOptions {
  readonly paper?: PaperName
  readonly units?: UnitPreferences
  readonly comparisons?: HeatComparisons
}

/** What a sheet is built from, dated 9 April 2031. */
export const sheetInput = (
  { design, hive, report }: Built,
  { paper = 'a4', units = METRIC, comparisons }: SheetOptions = {},
): BuildSheetInput => ({
  design,
  hive,
  report,
  units,
  paper,
  date: '2031-04-09',
  ...(comparisons && { comparisons }),
  fonts: FONTS,
})

/** The same for the pages before they become a PDF. */
export const sheetContent = (
  { design, hive, report }: Built,
  { paper = 'a4', units = METRIC, comparisons }: SheetOptions = {},
): SheetContent => ({
  design,
  hive,
  report,
  units,
  date: '2031-04-09',
  picture: undefined,
  stepPictures: [],
  comparisons,
  paper: paperOf(paper),
  type: TYPE,
})
