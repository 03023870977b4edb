import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import type { Design } from '../../src/design/schema.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import { buildHeadlessReport } from '../../src/reports/headless.ts'
import { type HeadlessReport, headlessSchema } from '../../src/reports/headlessSchema.ts'
import { runReports } from '../../src/reports/report.ts'

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))
const folder = mkdtempSync(join(tmpdir(), 'report-'))

afterAll(() => rmSync(folder, { recursive: true }))

/** Starting a process is slow on a busy machine. */
const PATIENCE_MS = 60_000

const runReport = (text: string, ...args: readonly string[]) => {
  const file = join(folder, 'design.json')
  writeFileSync(file, text)
  const tsx = join(root, 'node_modules/tsx/dist/cli.mjs')
  const command = [tsx, join(root, 'scripts/report.ts'), file, ...args]
  return spawnSync(process.execPath, command, { encoding: 'utf8', maxBuffer: 1 << 26 })
}

const reportOf = (design: Design): HeadlessReport => {
  const built = deriveHive(design)
  if (built.kind === 'refused') throw new Error(built.refusals[0]?.message)
  const report = runReports(design, built.hive)
  return buildHeadlessReport({ design, hive: built.hive, report, warnings: [] })
}

describe('the report command', () => {
  it(
    'prints the report as one JSON object, and the same bytes each time',
    () => {
      const first = runReport(formatDesign(DEFAULT_DESIGN))
      expect(first.stderr).toBe('')
      expect(first.status).toBe(0)
      expect(JSON.parse(first.stdout)).toEqual(JSON.parse(JSON.stringify(reportOf(DEFAULT_DESIGN))))
      expect(runReport(formatDesign(DEFAULT_DESIGN)).stdout).toBe(first.stdout)
    },
    PATIENCE_MS,
  )

  it(
    'says what is missing from a design, and fills it in',
    () => {
      const { combwright, title } = JSON.parse(formatDesign(DEFAULT_DESIGN))
      const { status, stdout } = runReport(JSON.stringify({ combwright, title }))
      expect(status).toBe(0)
      const { design, warnings } = JSON.parse(stdout)
      expect(design).toEqual(DEFAULT_DESIGN)
      expect(warnings.join('\n')).toContain('walls')
    },
    PATIENCE_MS,
  )

  it(
    'ends with 2, a message for each field, and no output for a broken design',
    () => {
      const broken = formatDesign(DEFAULT_DESIGN)
        .replace('"frames": 20', '"frames": 2000')
        .replace('"liningMm": 12', '"liningMm": "thick"')
      const { status, stdout, stderr } = runReport(broken)
      expect(status).toBe(2)
      expect(stdout).toBe('')
      expect(stderr).toContain('cavity.frames: ')
      expect(stderr).toContain('walls.liningMm: ')
    },
    PATIENCE_MS,
  )

  it(
    'ends with 2 and the number to change when the hive cannot be built',
    () => {
      const { stand } = DEFAULT_DESIGN
      const low = { ...DEFAULT_DESIGN, stand: { ...stand, workingHeightMm: 450 } }
      const built = deriveHive(low)
      if (built.kind === 'built') throw new Error('Choose a design that is refused.')
      const { status, stdout, stderr } = runReport(formatDesign(low))
      expect(status).toBe(2)
      expect(stdout).toBe('')
      expect(stderr).toContain(`${built.refusals[0]?.field}: ${built.refusals[0]?.message}`)
    },
    PATIENCE_MS,
  )

  it(
    'ends with 2 for a file that is not there',
    () => {
      const { status, stderr } = runReport('', join(folder, 'second.json'))
      expect(status).toBe(2)
      expect(stderr).toContain('DESIGN.json')
    },
    PATIENCE_MS,
  )

  it(
    'writes the build sheet and the exports with --out, the same bytes for the same date',
    () => {
      const text = formatDesign(DEFAULT_DESIGN)
      const [a, b] = ['a', 'b'].map((name) => {
        const out = join(folder, name)
        const { status, stderr } = runReport(text, '--out', out, '--date', '2031-04-09')
        expect(stderr).toBe('')
        expect(status).toBe(0)
        return readdirSync(out).map((file) => ({ file, bytes: readFileSync(join(out, file)) }))
      })
      expect(a?.map(({ file }) => file.replace('quarry-lane-long-hive', ''))).toEqual([
        '-build-sheet.pdf',
        '-cut-list.csv',
        '-section-across.svg',
        '-section-along.svg',
        '.json',
      ])
      expect(b).toEqual(a)
      expect(a?.[0]?.bytes.subarray(0, 5).toString()).toBe('%PDF-')
      expect(a?.[4]?.bytes.toString()).toBe(text)
    },
    2 * PATIENCE_MS,
  )
})

describe('buildHeadlessReport', () => {
  it.each(EXAMPLES)('follows the schema for $name', ({ design }) => {
    const report = JSON.parse(JSON.stringify(reportOf(design)))
    const checked = headlessSchema.safeParse(report)
    expect(checked.error?.issues ?? []).toEqual([])
    // Nothing was dropped or changed: the schema knows every key.
    expect(checked.data).toEqual(report)
  })

  it('gives every part a place, and a mass that adds up to the hive', () => {
    const { parts, shop } = reportOf(DEFAULT_DESIGN)
    expect(parts.filter((p) => !p.boxMm && !p.boxesMm && !p.prismMm)).toEqual([])
    expect(parts.reduce((sum, p) => sum + p.massKg, 0)).toBeCloseTo(shop.massKg.empty, 6)
    expect(new Set(parts.map((p) => p.id)).size).toBe(parts.length)
  })

  it('puts the corners of a sloping part in the axes of the hive', () => {
    const { parts, dimensions } = reportOf(DEFAULT_DESIGN)
    const corners = parts
      .filter((p) => p.group === 'roof')
      .flatMap((p) => p.prismMm ?? [])
      .flatMap((prism) => prism.polygonMm)
    // The default roof falls from back to front, so its pieces are drawn by height and depth.
    expect(corners.length).toBeGreaterThan(0)
    expect(corners.every((c) => c.x === undefined)).toBe(true)
    expect(Math.max(...corners.map((c) => c.y ?? 0))).toBeCloseTo(dimensions.roofTopMm, 6)
  })

  it('warns where the bounds of ISO 6946 lie too far apart', () => {
    const built = deriveHive(DEFAULT_DESIGN)
    if (built.kind === 'refused') throw new Error('The default design must be built.')
    const report = runReports(DEFAULT_DESIGN, built.hive)
    const [first, ...rest] = report.heat.panels
    if (first === undefined) throw new Error('The hive has panels.')
    const apart = { ...first, lowerBoundM2KPerW: 1, upperBoundM2KPerW: 1.51 }
    const heat = { ...report.heat, panels: [apart, ...rest] }
    const input = { design: DEFAULT_DESIGN, hive: built.hive, warnings: ['First.'] }
    const { warnings } = buildHeadlessReport({ ...input, report: { ...report, heat } })
    expect(warnings).toHaveLength(2)
    expect(warnings[0]).toBe('First.')
    expect(warnings[1]).toContain(first.name)
  })
})

describe('the published JSON schema', () => {
  const published = JSON.parse(readFileSync(join(root, 'public/schema/report.schema.json'), 'utf8'))

  it('is what the schema in the code says (npm run schema writes it)', () => {
    expect(published).toEqual(JSON.parse(JSON.stringify(z.toJSONSchema(headlessSchema))))
  })

  it('accepts a report, and refuses one with a key too many or a number missing', () => {
    const schema = z.fromJSONSchema(published)
    const report = JSON.parse(JSON.stringify(reportOf(DEFAULT_DESIGN)))
    expect(schema.safeParse(report).success).toBe(true)
    expect(schema.safeParse({ ...report, extra: 1 }).success).toBe(false)
    const { conductanceWPerK: _, ...heat } = report.heat
    expect(schema.safeParse({ ...report, heat }).success).toBe(false)
  })
})
