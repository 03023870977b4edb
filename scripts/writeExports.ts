import { mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { join } from 'node:path'
import { formatDesign } from '../src/design/formatDesign.ts'
import type { HeadlessInput } from '../src/reports/headless.ts'
import { planComparisons } from '../src/reports/heat/field/planComparisons.ts'
import { solvePlan } from '../src/reports/heat/field/solvePlan.ts'
import { cutListCsv } from '../src/sheets/cutListCsv.ts'
import { fileNameFor } from '../src/sheets/fileNames.ts'
import type { PaperName } from '../src/sheets/pages/paper.ts'
import { buildSheetPdf } from '../src/sheets/pdf/buildSheet.ts'
import { sectionDrawing } from '../src/sheets/sectionDrawing.ts'
import { shopTables } from '../src/sheets/shopCsv.ts'
import { drawingToSvg } from '../src/sheets/svg.ts'
import { sectionPlace } from '../src/sheets/views/sectionPlace.ts'
import { INCH, METRIC } from '../src/units/preferences.ts'

export interface ExportChoice {
  readonly folder: string
  readonly units: 'mm' | 'in'
  readonly paper: PaperName
  /** Printed on the sheet: `2031-04-09`. */
  readonly date: string
}

/** Writes the build sheet, the lists, two sections and the design itself into a folder. */
export const writeExports = async (input: HeadlessInput, choice: ExportChoice): Promise<void> => {
  const { design, hive, report } = input
  const units = choice.units === 'in' ? INCH : METRIC
  mkdirSync(choice.folder, { recursive: true })
  const write = (what: string, extension: string, content: string | Uint8Array) =>
    writeFileSync(join(choice.folder, fileNameFor(design.title.name, what, extension)), content)

  write('', 'json', formatDesign(design))
  write('cut list', 'csv', cutListCsv(report.shop, units))
  for (const { name, csv } of shopTables(report.shop, units.length)) write(name, 'csv', csv)
  const cuts = [
    { name: 'section across', plane: { axis: 'x', at: sectionPlace(hive) } },
    { name: 'section along', plane: { axis: 'z', at: 0 } },
  ] as const
  for (const { name, plane } of cuts) {
    write(name, 'svg', drawingToSvg(sectionDrawing(hive, plane, units)))
  }
  const { paper, date } = choice
  const fonts = { regular: readFont('400Regular'), semibold: readFont('600SemiBold') }
  const comparisons = solvePlan(planComparisons(design, hive, []))
  const pdf = await buildSheetPdf({
    ...{ design, hive, report, comparisons },
    ...{ units, paper, date, fonts },
  })
  write('build sheet', 'pdf', pdf)
}

const { resolve } = createRequire(import.meta.url)

const readFont = (weight: '400Regular' | '600SemiBold'): Uint8Array =>
  readFileSync(resolve(`@expo-google-fonts/ibm-plex-sans/${weight}/IBMPlexSans_${weight}.ttf`))
