import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import { z } from 'zod'
import { readDesignFile, reportOn } from '../../scripts/designReport.ts'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import type { Design } from '../../src/design/schema.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import { buildHeadlessReport } from '../../src/reports/headless.ts'
import { type HeadlessReport, headlessSchema } from '../../src/reports/headlessSchema.ts'
import type { HeatFieldAnswer } from '../../src/reports/heat/field/heatFieldAnswer.ts'
import { runWholeReports } from '../../src/reports/wholeReport.ts'
import { MADE_ANSWER } from '../reports/heat/field/syntheticField.ts'

const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value))

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))
const folder = mkdtempSync(join(tmpdir(), 'report-'))

afterAll(() => rmSync(folder, { recursive: true }))

/** Starting a process is slow on a busy machine. */
const PATIENCE_MS = 240_000

const save = (name: string, text: string): string => {
  const file = join(folder, name)
  writeFileSync(file, text)
  return file
}

const runReport = (text: string, ...args: readonly string[]) => {
  const file = save('design.json', text)
  const tsx = join(root, 'node_modules/tsx/dist/cli.mjs')
  const command = [tsx, join(root, 'scripts/report.ts'), file, ...args]
  return spawnSync(process.execPath, command, { encoding: 'utf8', maxBuffer: 1 << 26 })
}

/** Without a field unless one is given: to solve one takes seconds. */
const reportOf = (design: Design, field?: HeatFieldAnswer): HeadlessReport => {
  const built = deriveHive(design)
  if (built.kind === 'refused') throw new Error(built.refusals[0]?.message)
  const report = runWholeReports(design, built.hive, field)
  return buildHeadlessReport({ design, hive: built.hive, report, warnings: [] })
}

describe('the report command', () => {
  it(
    'prints one JSON object and writes the exports, the same bytes for the same design and date',
    () => {
      const [first, second] = ['a', 'b'].map((name) => {
        const out = join(folder, name)
        const run = runReport(formatDesign(DEFAULT_DESIGN), '--out', out, '--date', '2031-04-09')
        expect(run.stderr).toBe('')
        expect(run.status).toBe(0)
        const files = readdirSync(out).map((file) => [file, readFileSync(join(out, file))] as const)
        return { stdout: run.stdout, files }
      })
      expect(second).toEqual(first)
      const made = reportOn(DEFAULT_DESIGN, [])
      if (made.kind === 'bad') throw new Error(made.messages.join())
      const printed = JSON.parse(first?.stdout ?? '')
      expect(printed).toEqual(plain(made.report))
      expect(printed.heat).toMatchObject({ method: 'field', field: { quality: 'full' } })
      expect(printed.heat.conductanceWPerK).toBe(printed.heat.field.conductanceWPerK)
      const files = new Map(first?.files)
      const name = 'quarry-lane-long-hive'
      const tables = [
        'assembly',
        'boards',
        'cut-list',
        'fasteners',
        'hardware',
        'labels',
        'set-ups',
      ]
      const csv = [...tables, 'sheets', 'shopping-list'].map((table) => `${name}-${table}.csv`)
      const others = ['-build-sheet.pdf', '-section-across.svg', '-section-along.svg', '.json']
      expect([...files.keys()].toSorted()).toEqual(
        [...csv, ...others.map((end) => `${name}${end}`)].toSorted(),
      )
      expect(files.get(`${name}-build-sheet.pdf`)?.subarray(0, 5).toString()).toBe('%PDF-')
      expect(files.get(`${name}.json`)?.toString()).toBe(formatDesign(DEFAULT_DESIGN))
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
})

describe('readDesignFile', () => {
  it('says what is missing from a design, and fills it in', () => {
    const { combwright, title } = JSON.parse(formatDesign(DEFAULT_DESIGN))
    const read = readDesignFile(save('short.json', JSON.stringify({ combwright, title })))
    if (read.kind === 'bad') throw new Error(read.messages.join())
    expect(read.design).toEqual(DEFAULT_DESIGN)
    expect(read.warnings.join('\n')).toContain('walls')
  })

  it('refuses a file that is not there, and one of 2 MB without reading it', () => {
    expect(readDesignFile(join(folder, 'none.json'))).toMatchObject({ kind: 'bad' })
    const huge = readDesignFile(save('huge.json', ' '.repeat(2_000_000)))
    expect(huge).toMatchObject({ kind: 'bad', messages: [expect.stringContaining('2 MB')] })
  })
})

describe('reportOn', () => {
  it('names the number to change when the hive cannot be built', () => {
    const { frame } = DEFAULT_DESIGN
    const low = { ...DEFAULT_DESIGN, frame: { ...frame, topBarLengthMm: 460 } }
    const built = deriveHive(low)
    if (built.kind === 'built') throw new Error('Choose a design that is refused.')
    const [refusal] = built.refusals
    const { kind, messages } = { messages: [], ...reportOn(low, []) }
    expect(kind).toBe('bad')
    expect(messages[0]).toBe(`${refusal?.field}: ${refusal?.message}`)
  })
})

describe('buildHeadlessReport', () => {
  it.each(EXAMPLES)('follows the schema for $name', ({ design }) => {
    const report = plain(reportOf(design))
    const checked = headlessSchema.safeParse(report)
    expect(checked.error?.issues ?? []).toEqual([])
    // Nothing was dropped or changed: the schema knows every key.
    expect(checked.data).toEqual(report)
  })

  it('has the field without its grid, and by the schema', () => {
    const { heat, checks } = reportOf(DEFAULT_DESIGN, MADE_ANSWER)
    const { grid: _, coldest, ...rest } = MADE_ANSWER
    const pointMm = { x: 0, y: 0, z: 0 }
    expect(heat).toMatchObject({ method: 'field', conductanceWPerK: 2 })
    expect(heat.field).toEqual({ ...rest, coldest: { ...coldest, pointMm } })
    expect(checks.map(({ id }) => id)).toContain('ceiling-stays-warmer')
    const report = plain(reportOf(DEFAULT_DESIGN, MADE_ANSWER))
    expect(headlessSchema.parse(report)).toEqual(report)
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
    const report = runWholeReports(DEFAULT_DESIGN, built.hive)
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
    expect(published).toEqual(plain(z.toJSONSchema(headlessSchema)))
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
