import { readFileSync, statSync } from 'node:fs'
import { fieldTitle } from '../src/design/fieldAt.ts'
import { parseDesign } from '../src/design/parseDesign.ts'
import type { Design } from '../src/design/schema.ts'
import { MAX_DESIGN_BYTES, sizeMessage } from '../src/design/sizeLimit.ts'
import { deriveHive } from '../src/hive/deriveHive.ts'
import { buildHeadlessReport, type HeadlessInput } from '../src/reports/headless.ts'
import type { HeadlessReport } from '../src/reports/headlessSchema.ts'
import { solveHiveField } from '../src/reports/heat/field/solveHiveField.ts'
import { cutList } from '../src/reports/shop/cutList.ts'
import { buildCuttingJobs } from '../src/reports/shop/cutting/buildCuttingJobs.ts'
import { solveCuttingPlan } from '../src/reports/shop/cutting/solveCuttingPlan.ts'
import { runWholeReports } from '../src/reports/wholeReport.ts'

interface Bad {
  readonly kind: 'bad'
  readonly messages: readonly string[]
}

type Read =
  | { readonly kind: 'ok'; readonly design: Design; readonly warnings: readonly string[] }
  | Bad

/** Reads a saved design; its warnings say what had to be filled in or brought up to date. */
export const readDesignFile = (file: string): Read => {
  const text = readText(file)
  if (text.kind === 'bad') return text
  const parsed = parseDesign(text.text)
  if (parsed.kind === 'bad') {
    return { kind: 'bad', messages: parsed.problems.map((p) => withField(p.field, p.message)) }
  }
  const { design, migratedFrom, filled } = parsed
  const updated =
    migratedFrom === undefined
      ? []
      : [`The design was brought up to date from version ${migratedFrom}.`]
  const missing = filled.map(
    (path) => `${path} (${fieldTitle(path)}) was missing and took its usual value.`,
  )
  return { kind: 'ok', design, warnings: [...updated, ...missing] }
}

const withField = (field: string, message: string): string =>
  field === '' ? message : `${field}: ${message}`

const readText = (file: string): { readonly kind: 'ok'; readonly text: string } | Bad => {
  try {
    const { size } = statSync(file)
    if (size > MAX_DESIGN_BYTES) return { kind: 'bad', messages: [sizeMessage(size)] }
    return { kind: 'ok', text: readFileSync(file, 'utf8') }
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error)
    return { kind: 'bad', messages: [`The file can't be read: ${why}`] }
  }
}

type Made =
  | { readonly kind: 'ok'; readonly report: HeadlessReport; readonly input: HeadlessInput }
  | Bad

/** Builds the hive, solves its heat field in full, plans its boards and runs every report on it. */
export const reportOn = (design: Design, warnings: readonly string[]): Made => {
  const built = deriveHive(design)
  if (built.kind === 'refused') {
    return { kind: 'bad', messages: built.refusals.map((r) => withField(r.field, r.message)) }
  }
  const field = solveHiveField(design, built.hive, 'full')
  const plan = solveCuttingPlan(buildCuttingJobs(design, cutList(built.hive.parts)))
  const report = runWholeReports(design, built.hive, field, plan)
  const input = { design, hive: built.hive, report, warnings }
  return { kind: 'ok', report: buildHeadlessReport(input), input }
}
