import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { SchemeAnswer } from '../src/solvers/conduction/fieldAnswer.ts'
import type { FieldGrid } from '../src/solvers/conduction/fieldGrid.ts'
import {
  type FieldQuestion,
  type SolveSteps,
  solveCells,
  solveVertices,
} from '../src/solvers/conduction/solveWorld.ts'
import type { World } from '../src/solvers/conduction/world.ts'
import { readBoxFile } from './boxFile.ts'
import { buildBoxWorld } from './boxWorld.ts'

interface Run {
  /** Set-up and solution together; the best of a few runs, which others disturbed least. */
  readonly ms: number
  /** The longest that the thread was held between two steps, in that run. */
  readonly longestStepMs: number
  readonly answer: SchemeAnswer
}

type Scheme = (question: FieldQuestion) => SolveSteps

const SCHEMES: readonly (readonly [string, Scheme])[] = [
  ['cells', solveCells],
  ['vertices', solveVertices],
]

/** Widths of the cells that give about so many of them, mm, and how often each is measured. */
const SIZES = [
  { name: '60 thousand', cellMm: 18, cellsPerGap: 1, runs: 5 },
  { name: '250 thousand', cellMm: 10.5, cellsPerGap: 2, runs: 3 },
  { name: '1 million', cellMm: 6.1, cellsPerGap: 2, runs: 2 },
] as const

/** Measures the conduction solver on a long hive and prints what came of it as tables. */
export const benchField = (root: string): void => {
  const world = readWorld(root)
  // Lets the compiler settle before the clock starts.
  for (const [, scheme] of SCHEMES) measure(scheme, questionOf(world, SIZES[0]), 8)
  compareSizes(world)
  printSymmetric(world)
  printWarm(world)
}

const readWorld = (root: string): World => {
  const text = readFileSync(join(root, 'test/references/data/long-hive.json'), 'utf8')
  const read = readBoxFile(text)
  if (read.kind === 'bad') throw new Error(read.messages.join('\n'))
  return buildBoxWorld(read.file).world
}

type Size = (typeof SIZES)[number]

const questionOf = (world: World, size: Size, tolerance = 1e-8): FieldQuestion => {
  const cellM = size.cellMm / 1000
  const { cellsPerGap } = size
  const mesh = { leastCellM: cellM, growth: 1, greatestCellM: cellM, cellsPerGap, mergeM: 1e-6 }
  // Without its planes of symmetry the hive stands for any other of its size.
  return { world, mesh, tolerance, useMirrors: false }
}

const measure = (scheme: Scheme, question: FieldQuestion, runs: number): Run =>
  Array.from({ length: runs }, () => runOnce(scheme(question))).reduce((best, run) =>
    run.ms < best.ms ? run : best,
  )

const runOnce = (steps: SolveSteps): Run => {
  const began = performance.now()
  let before = began
  let longestStepMs = 0
  for (;;) {
    const { done, value } = steps.next()
    const now = performance.now()
    longestStepMs = Math.max(longestStepMs, now - before)
    before = now
    if (done) return { ms: now - began, longestStepMs, answer: value }
  }
}

/** Both schemes to 1e-8, by multigrid and by the plain preconditioner, in the same run. */
const compareSizes = (world: World): void => {
  printRow('long hive, to 1e-8', ...HEAD)
  const perUnknown = new Map<string, number>()
  for (const size of SIZES) {
    const bounds: (number | undefined)[] = []
    for (const [name, scheme] of SCHEMES) {
      const question = questionOf(world, size)
      const { ms, longestStepMs, answer } = measure(scheme, question, size.runs)
      const plain = measure(
        scheme,
        { ...question, preconditioner: 'jacobi' },
        size.runs > 2 ? 2 : 1,
      )
      bounds.push(answer.boundWPerK)
      const usPerUnknown = (1000 * ms) / answer.unknowns
      const first = perUnknown.get(name) ?? usPerUnknown
      perUnknown.set(name, first)
      printRow(
        `${size.name}, ${name}`,
        String(answer.unknowns),
        ms.toFixed(0),
        String(answer.iterations),
        plain.ms.toFixed(0),
        String(plain.answer.iterations),
        (ms / plain.ms).toFixed(2),
        usPerUnknown.toFixed(2),
        (usPerUnknown / first).toFixed(2),
        answer.bytesPerUnknown.toFixed(0),
        longestStepMs.toFixed(0),
      )
    }
    const [lower = Number.NaN, upper = Number.NaN] = bounds
    console.log(
      `  certainly ${lower.toFixed(4)} to ${upper.toFixed(4)} W/K, ` +
        `±${((50 * (upper - lower)) / ((upper + lower) / 2)).toFixed(2)} %`,
    )
  }
}

/** What planes of symmetry save, at the largest size. */
const printSymmetric = (world: World): void => {
  const size = SIZES[2]
  printRow('\nwith its symmetry', 'unknowns', 'ms', 'iterations')
  for (const [name, scheme] of SCHEMES) {
    const { ms, answer } = measure(
      scheme,
      { ...questionOf(world, size), useMirrors: true },
      size.runs,
    )
    printRow(
      `${size.name}, ${name}`,
      String(answer.unknowns),
      ms.toFixed(0),
      String(answer.iterations),
    )
  }
}

const HEAD = [
  'unknowns',
  'ms',
  'iterations',
  'Jacobi ms',
  'iterations',
  'share',
  'µs each',
  'to first',
  'bytes each',
  'longest step',
]

/** A slider's step: the foam a little better, with the field before it as the start and without. */
const printWarm = (world: World): void => {
  const size = SIZES[0]
  const before = measure(solveVertices, questionOf(world, size), 1).answer.grid
  const changed = questionOf(changeFoam(world), size, 1e-3)
  printRow('\n60 thousand, to 1e-3', 'cold ms', 'iterations', 'warm ms', 'iterations')
  for (const [name, scheme] of SCHEMES) {
    const [cold, warm] = [undefined, before].map((start: FieldGrid | undefined) =>
      measure(scheme, { ...changed, start }, 5),
    )
    const cells = [cold, warm].flatMap((run) =>
      run ? [run.ms.toFixed(0), String(run.answer.iterations)] : [],
    )
    printRow(name, ...cells)
  }
}

const FOAM_WPERMK = 0.034

const changeFoam = (world: World): World => ({
  ...world,
  blocks: world.blocks.map((block) =>
    block.kind === 'solid' && block.conductivityWPerMK === FOAM_WPERMK
      ? { ...block, conductivityWPerMK: 0.033 }
      : block,
  ),
})

const printRow = (name: string, ...cells: readonly string[]): void =>
  console.log(name.padEnd(23) + cells.map((cell) => cell.padStart(13)).join(''))
