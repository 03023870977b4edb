import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))
const folder = mkdtempSync(join(tmpdir(), 'cut-'))

afterAll(() => rmSync(folder, { recursive: true }))

/** Starting a process is slow on a busy machine. */
const PATIENCE_MS = 120_000

const runCut = (job: unknown, ...args: readonly string[]) => {
  const file = join(folder, 'job.json')
  writeFileSync(file, typeof job === 'string' ? job : JSON.stringify(job))
  const tsx = join(root, 'node_modules/tsx/dist/cli.mjs')
  const command = [tsx, join(root, 'scripts/cut.ts'), file, ...args]
  return spawnSync(process.execPath, command, { encoding: 'utf8', maxBuffer: 1 << 26 })
}

const planOf = (job: unknown, ...args: readonly string[]) => {
  const { status, stdout, stderr } = runCut(job, ...args)
  expect(stderr).toBe('')
  expect(status).toBe(0)
  return JSON.parse(stdout)
}

describe('the cut command', () => {
  it(
    'prints what to buy and where each piece lies, for boards and sheets at once',
    () => {
      // Four pieces and three cuts end flush: 4 × 597 + 3 × 4 = 2400.
      const plan = planOf({
        lumber: {
          stocks: [
            { id: 'long', lengthMm: 2400, price: 7.1 },
            { lengthMm: 1200, price: 4.3 },
          ],
          kerfMm: 4,
          parts: [{ lengthMm: 597, count: 12 }],
        },
        // Two side by side, trimmed: 5 + 495 + 10 + 495 + 5 = 1010.
        sheets: {
          stocks: [{ lengthMm: 1010, widthMm: 610, price: 0.1 }],
          kerfMm: 10,
          trimMm: 5,
          stages: 2,
          parts: [{ id: 'side', lengthMm: 600, widthMm: 495, count: 6, mayTurn: true }],
        },
      })
      expect(plan.lumber).toMatchObject({
        price: 21.3,
        bound: 21.3,
        proven: true,
        boards: 3,
        bars: [{ stock: 0, id: 'long', lengthMm: 2400, price: 7.1, count: 3, offcutMm: 0 }],
      })
      expect(plan.lumber.bars[0].pieces).toEqual(
        [0, 601, 1202, 1803].map((fromMm) => ({ part: 0, fromMm, lengthMm: 597 })),
      )
      expect(plan.lumber.certificate.priceUnits).toBe(2130)
      expect(plan.lumber.milliseconds).toBeGreaterThanOrEqual(0)
      expect(plan.sheets).toMatchObject({ price: 0.3, bound: 0.3, proven: true, sheets: 3 })
      const [layout] = plan.sheets.layouts
      expect(layout).toMatchObject({ stock: 0, lengthMm: 1010, widthMm: 610, count: 3, stages: 1 })
      const side = { part: 0, id: 'side', yMm: 5, lengthMm: 495, widthMm: 600, turned: true }
      expect(layout.pieces).toEqual([
        { ...side, xMm: 5 },
        { ...side, xMm: 510 },
      ])
      expect(layout.offcuts).toEqual([])
      expect(layout.cuts).toMatchObject({
        kind: 'cut',
        along: 'width',
        atMm: 500,
        first: { kind: 'part', ...side, xMm: 5 },
        second: { kind: 'part', ...side, xMm: 510 },
      })
    },
    PATIENCE_MS,
  )

  it(
    'plans 400 parts within the seconds it is given, numbers without the dust of sums',
    () => {
      const parts = Array.from({ length: 40 }, (_, i) => ({
        lengthMm: Math.round((4.1 + 1.37 * i) * 16) * (25.4 / 16),
        count: 10,
      }))
      const stocks = [96, 120, 144].map((inches, i) => ({
        lengthMm: inches * 25.4,
        price: 6.99 + 2.1 * i,
      }))
      const run = runCut({ lumber: { stocks, kerfMm: 3.175, parts } }, '--seconds', '1')
      expect(run.status).toBe(0)
      const { lumber } = JSON.parse(run.stdout)
      expect(lumber.bound).toBeLessThanOrEqual(lumber.price)
      // 400 parts in all, each bar's as often as there are bars of its kind.
      const pieces = lumber.bars.map(
        (bar: { count: number; pieces: unknown[] }) => bar.count * bar.pieces.length,
      )
      expect(pieces.reduce((sum: number, n: number) => sum + n, 0)).toBe(400)
      expect(run.stdout).not.toMatch(/\d\.\d{7}/)
    },
    PATIENCE_MS,
  )

  it(
    'ends with 2, a message for each and no plan when something can not be cut',
    () => {
      const { status, stdout, stderr } = runCut({
        lumber: {
          stocks: [{ lengthMm: 2400, price: 1 }],
          kerfMm: 3,
          parts: [{ id: 'ridge', lengthMm: 2401, count: 1 }],
        },
        sheets: { stocks: [], kerfMm: 3, parts: [{ lengthMm: 100, widthMm: 100, count: 1 }] },
      })
      expect(status).toBe(2)
      expect(stdout).toBe('')
      expect(stderr).toMatch(/^lumber: .*ridge.*2401.*\nsheets: /)
    },
    PATIENCE_MS,
  )

  it(
    'ends with 2 and says what is wrong with a broken file',
    () => {
      const { status, stdout, stderr } = runCut('{"lumber": {"kerfMm": -1}}')
      expect(status).toBe(2)
      expect(stdout).toBe('')
      expect(stderr).toContain('lumber.stocks is missing')
    },
    PATIENCE_MS,
  )

  it(
    'explains itself when it is called in another way',
    () => {
      const { status, stderr } = runCut('{}', '--seconds', '0')
      expect(status).toBe(2)
      expect(stderr).toContain('npm run --silent cut -- JOB.json')
    },
    PATIENCE_MS,
  )
})
