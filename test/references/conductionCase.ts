import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { expect } from 'vitest'
import { z } from 'zod'
import type { FieldAnswer } from '../../src/solvers/conduction/fieldAnswer.ts'
import { sampleField } from '../../src/solvers/conduction/fieldGrid.ts'
import { solveWorld } from '../../src/solvers/conduction/solveWorld.ts'
import type {
  Block,
  Contact,
  MeshSpec,
  Six,
  Triple,
  World,
} from '../../src/solvers/conduction/world.ts'

// A case of conduction as data: lengths in millimetres, environments by name. A case of kind
// "plane" has no z: it is solved as a slice one cell thick, and its heat flows are for one metre.

const span = z.tuple([z.number(), z.number()])
const region = z
  .strictObject({
    name: z.string(),
    xMm: span,
    yMm: span,
    zMm: span.optional(),
    conductivityWPerMK: z.number().positive().optional(),
    environment: z.string().optional(),
  })
  .refine((r) => (r.conductivityWPerMK === undefined) !== (r.environment === undefined), {
    message: 'a region is matter with a conductivity or air of an environment',
  })
const SIDES = ['-x', '+x', '-y', '+y', '-z', '+z'] as const

const conductionCase = z.strictObject({
  title: z.string(),
  sources: z.array(z.string()).min(1),
  kind: z.enum(['plane', 'space']),
  environments: z.array(
    z.strictObject({
      name: z.string(),
      temperatureC: z.number(),
      surfaceResistanceM2KPerW: z.number().nonnegative(),
    }),
  ),
  /** The later region holds where two overlap. */
  regions: z.array(region).min(1),
  /** What fills the rest of the box around all regions; nothing that takes heat if left out. */
  background: z.string().optional(),
  /** What lies beyond the sides of that box; nothing that takes heat if left out. */
  sides: z.partialRecord(z.enum(SIDES), z.string()),
  mesh: z.strictObject({
    leastCellMm: z.number().positive(),
    growth: z.number().min(1),
    greatestCellMm: z.number().positive(),
    cellsPerGap: z.int().min(1),
  }),
  points: z.array(
    z.strictObject({
      name: z.string(),
      atMm: z.array(z.number()).min(2).max(3),
      expectedC: z.number(),
      withinK: z.number(),
    }),
  ),
  /** From an environment into the matter. */
  flows: z.array(
    z.strictObject({ environment: z.string(), expectedW: z.number(), withinW: z.number() }),
  ),
})

export type ConductionCase = z.infer<typeof conductionCase>

export interface SolvedCase {
  readonly answer: FieldAnswer
  /** Of a plane case: for one metre. */
  readonly lowerWPerK: number
  readonly upperWPerK: number
  readonly temperatureAtMm: (at: readonly number[]) => number
  readonly heatFrom: (environment: string) => number
}

/** Reads one of the cases in `data`. */
export const readConductionCase = (file: string): ConductionCase =>
  parseConductionCase(readFileSync(fileURLToPath(new URL(`data/${file}`, import.meta.url)), 'utf8'))

/** Throws where the text is not a case, or where it names an environment that is not there. */
export const parseConductionCase = (text: string): ConductionCase => {
  const given = conductionCase.parse(JSON.parse(text))
  worldOf(given)
  return given
}

/** Solves a case on its own mesh, or on one that differs from it. */
export const solveCase = (
  given: ConductionCase,
  change: Partial<ConductionCase['mesh']> = {},
): SolvedCase => {
  const own = { ...given.mesh, ...change }
  const shape = { ...given, mesh: own }
  const answer = solveWorld({ world: worldOf(shape), mesh: meshOf(own), tolerance: 1e-8 })
  const perDepth = given.kind === 'plane' ? 1 / depthM(shape) : 1
  return {
    answer,
    lowerWPerK: (answer.lowerWPerK ?? Number.NaN) * perDepth,
    upperWPerK: (answer.upperWPerK ?? Number.NaN) * perDepth,
    temperatureAtMm: ([x = 0, y = 0, z = 0]) =>
      sampleField(answer.grid, x / 1000, y / 1000, z / 1000),
    heatFrom: (name) =>
      (answer.environmentHeatW[environmentIndex(given, name)] ?? Number.NaN) * perDepth,
  }
}

/** Holds a solved case against all points and flows that it expects. */
export const expectCase = (given: ConductionCase, solved: SolvedCase): void => {
  for (const { name, atMm, expectedC, withinK } of given.points) {
    const actual = solved.temperatureAtMm(atMm)
    expect(Math.abs(actual - expectedC), `${name}: ${actual}`).toBeLessThanOrEqual(withinK)
  }
  for (const { environment, expectedW, withinW } of given.flows) {
    const actual = solved.heatFrom(environment)
    expect(Math.abs(actual - expectedW), `${environment}: ${actual}`).toBeLessThanOrEqual(withinW)
  }
}

/** The world that a case describes. */
export const worldOf = (given: ConductionCase): World => ({
  blocks: given.regions.map((each): Block => {
    const zMm = given.kind === 'plane' ? [0, depthM(given) * 1000] : each.zMm
    if (!zMm) throw new Error(`${each.name}: a case in space needs zMm`)
    const corner = (end: 0 | 1): Triple => [
      each.xMm[end] / 1000,
      each.yMm[end] / 1000,
      (zMm[end] ?? Number.NaN) / 1000,
    ]
    const box = { minM: corner(0), maxM: corner(1) }
    return each.environment === undefined
      ? { kind: 'solid', ...box, conductivityWPerMK: each.conductivityWPerMK ?? Number.NaN }
      : { kind: 'air', ...box, environment: environmentIndex(given, each.environment) }
  }),
  environments: given.environments.map(({ temperatureC, surfaceResistanceM2KPerW: r }) => ({
    temperatureC,
    surfaceResistanceM2KPerW: [r, r, r, r, r, r],
  })),
  background: contact(given, given.background),
  beyond: SIDES.map((side) => contact(given, given.sides[side])) as unknown as Six<Contact>,
})

const meshOf = (mesh: ConductionCase['mesh']): MeshSpec => ({
  leastCellM: mesh.leastCellMm / 1000,
  growth: mesh.growth,
  greatestCellM: mesh.greatestCellMm / 1000,
  cellsPerGap: mesh.cellsPerGap,
  mergeM: 1e-6,
})

/** Of the slice that stands for a plane case: as thick as its smallest cell is wide. */
const depthM = (given: ConductionCase): number => given.mesh.leastCellMm / 1000

const contact = (given: ConductionCase, name: string | undefined): Contact =>
  name === undefined ? 'adiabatic' : environmentIndex(given, name)

const environmentIndex = (given: ConductionCase, name: string): number => {
  const index = given.environments.findIndex((each) => each.name === name)
  if (index < 0) throw new Error(`no environment is called ${name}`)
  return index
}
