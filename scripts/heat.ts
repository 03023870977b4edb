/**
 * `npm run --silent heat -- BOXES.json`: steady heat through a cavity in a world of boxes, as one JSON
 * object. Exit code 2 and messages when the file is broken or has no answer.
 */
import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { solveWorld } from '../src/solvers/conduction/solveWorld.ts'
import { readBoxFile } from './boxFile.ts'
import { buildBoxWorld } from './boxWorld.ts'
import { describeBoxHeat } from './heatOfBoxes.ts'

const USAGE = [
  'npm run --silent heat -- BOXES.json [--tolerance 1e-8] [--least MM] [--file-grid]',
  '  --tolerance  relative residual to reach, between 0 and 1',
  '  --least      cells at the faces are this wide, mm; 2, or more for large worlds, if left out',
  "  --file-grid  the file's own uniform grid in place of a graded one",
]

const OPTIONS = {
  tolerance: { type: 'string', default: '1e-8' },
  least: { type: 'string' },
  'file-grid': { type: 'boolean', default: false },
} as const

const run = (): readonly string[] => {
  const { positionals, values } = parseArgs({ allowPositionals: true, options: OPTIONS })
  const [path, more] = positionals
  const tolerance = Number(values.tolerance)
  const leastMm = values.least === undefined ? undefined : Number(values.least)
  if (path === undefined || more !== undefined) return USAGE
  if (!(tolerance > 0 && tolerance < 1)) return USAGE
  if (leastMm !== undefined && !(leastMm > 0 && leastMm < Infinity)) return USAGE

  const read = readBoxFile(readFileSync(path, 'utf8'))
  if (read.kind === 'bad') return read.messages
  const { world, mesh, warnings } = buildBoxWorld(read.file, {
    leastMm,
    useFileGrid: values['file-grid'],
  })
  for (const warning of warnings) process.stderr.write(`${warning}\n`)

  const start = performance.now()
  const answer = solveWorld({ world, mesh, tolerance })
  const milliseconds = performance.now() - start
  const differenceK = read.file.bc.Ti - read.file.bc.Te
  const heat = describeBoxHeat(answer, { differenceK, milliseconds })
  process.stdout.write(`${JSON.stringify(heat, undefined, 2)}\n`)
  return []
}

const complain = (messages: readonly string[]): void => {
  if (messages.length === 0) return
  process.stderr.write(`${messages.join('\n')}\n`)
  process.exitCode = 2
}

try {
  complain(run())
} catch (error) {
  complain([error instanceof Error ? error.message : String(error)])
}
