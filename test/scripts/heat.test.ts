import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterAll, describe, expect, it } from 'vitest'
import type { BoxFile } from '../../scripts/boxFile.ts'
import { buildBoxWorld } from '../../scripts/boxWorld.ts'
import { describeBoxHeat } from '../../scripts/heatOfBoxes.ts'
import { solveWorld } from '../../src/solvers/conduction/solveWorld.ts'

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))
const folder = mkdtempSync(join(tmpdir(), 'heat-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** A wooden box whose floor, at low z, is thicker than its other five walls. */
const FILE: BoxFile = {
  boxes: [{ name: 'wood', x0: 0, x1: 0.6, y0: 0, y1: 0.6, z0: -0.2, z1: 0.6, k: 0.12 }],
  cavity: { x0: 0.1, x1: 0.5, y0: 0.1, y1: 0.5, z0: 0.1, z1: 0.5 },
  bc: { Ti: 35, Te: 5, Rsi: 0.13, Rse: 0.04 },
  grid: { h: 0.05, min_cells: 2 },
}

const heatOf = (file: BoxFile) => {
  const { world, mesh } = buildBoxWorld(file, { useFileGrid: true })
  const answer = solveWorld({ world, mesh, tolerance: 1e-10 })
  return describeBoxHeat(answer, { differenceK: file.bc.Ti - file.bc.Te, milliseconds: 1 })
}

describe('describeBoxHeat', () => {
  const heat = heatOf(FILE)
  const { west, east, south, north, floor, ceiling } = heat.faces

  it('gives each face its own heat, which all together is the conductance', () => {
    const sides = Object.values(heat.faces)
    const inner = sides.reduce((sum, side) => sum + side.heatW, 0)
    const outer = sides.reduce((sum, side) => sum + side.outerHeatW, 0)
    // Heat is the mean of the two schemes, the conductance that of the bounds: alike but for the grid.
    expect(Math.abs(inner / (30 * heat.conductanceWPerK) - 1)).toBeLessThan(0.02)
    expect(outer).toBeCloseTo(inner, 6)
    for (const side of [west, east, south, north]) expect(side.heatW).toBeCloseTo(west.heatW, 6)
    expect(floor.heatW).toBeLessThan(ceiling.heatW)
    expect(ceiling.innerAreaM2).toBeCloseTo(0.16, 6)
    expect(ceiling.resistanceM2KPerW).toBeCloseTo((0.16 * 30) / ceiling.heatW, 6)
  })

  it('finds the areas outside, where the walls are higher than inside', () => {
    expect(west.outerAreaM2).toBeCloseTo(0.6 * 0.8, 6)
    expect(floor.outerAreaM2).toBeCloseTo(0.36, 6)
  })

  it('finds the coldest inner surface, in the corners of the thinner ceiling', () => {
    expect(heat.minInnerSurfaceC).toBe(ceiling.innerLeastC)
    expect(ceiling.innerLeastC).toBeLessThan(floor.innerLeastC)
    expect(ceiling.innerMeanC).toBeGreaterThan(ceiling.innerLeastC)
  })

  it('counts heat as positive from inside to outside, also where the inside is the colder', () => {
    const cooled = heatOf({ ...FILE, bc: { ...FILE.bc, Ti: 5, Te: 35 } })
    expect(cooled.faces.west.heatW).toBeCloseTo(-west.heatW, 6)
    expect(cooled.faces.west.outerHeatW).toBeCloseTo(-west.outerHeatW, 6)
    expect(cooled.faces.west.resistanceM2KPerW).toBeCloseTo(west.resistanceM2KPerW, 6)
    expect(cooled.conductanceWPerK).toBeCloseTo(heat.conductanceWPerK, 9)
  })
})

/** Starting a process is slow on a busy machine. */
const PATIENCE_MS = 120_000

const runHeat = (text: string, ...args: readonly string[]) => {
  const file = join(folder, 'boxes.json')
  writeFileSync(file, text)
  const tsx = join(root, 'node_modules/tsx/dist/cli.mjs')
  const command = [tsx, join(root, 'scripts/heat.ts'), file, ...args]
  return spawnSync(process.execPath, command, { encoding: 'utf8' })
}

describe('the heat command', () => {
  it(
    'prints one JSON object with a certain band round the conductance',
    () => {
      const { status, stdout, stderr } = runHeat(JSON.stringify(FILE), '--file-grid')
      expect(stderr).toBe('')
      expect(status).toBe(0)
      const heat = JSON.parse(stdout)
      const { milliseconds: _, ...expected } = heatOf(FILE)
      expect(Object.keys(heat).toSorted()).toEqual(
        ['milliseconds', ...Object.keys(expected)].toSorted(),
      )
      expect(heat.conductanceWPerK).toBeCloseTo(expected.conductanceWPerK, 6)
      expect(heat.lowerWPerK).toBeLessThan(heat.conductanceWPerK)
      expect(heat.upperWPerK).toBeGreaterThan(heat.conductanceWPerK)
      expect(heat.milliseconds).toBeGreaterThan(0)
    },
    PATIENCE_MS,
  )

  it(
    'ends with 2 and says why, for a broken file, one without an answer, and a wrong option',
    () => {
      const [box] = FILE.boxes
      const broken = runHeat(JSON.stringify({ ...FILE, boxes: [{ ...box, k: -1 }] }))
      expect(broken).toMatchObject({ status: 2, stdout: '' })
      expect(broken.stderr).toBe(
        'boxes[0] (wood).k is -1, but must be a conductivity above 0, W/(m·K).\n',
      )
      // The cavity swallows all matter.
      const swallowed = runHeat(JSON.stringify({ ...FILE, cavity: { ...box } }))
      expect(swallowed).toMatchObject({ status: 2, stdout: '' })
      expect(swallowed.stderr).toMatch(/matter/)
      const wrong = runHeat(JSON.stringify(FILE), '--tolerance', 'small')
      expect(wrong).toMatchObject({ status: 2, stdout: '' })
      expect(wrong.stderr).toMatch(/--tolerance/)
    },
    PATIENCE_MS,
  )
})
