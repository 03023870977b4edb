/**
 * `npm run --silent report -- DESIGN.json [--out DIR]`: the report of a design as one JSON object, and
 * with `--out` also the build sheet and the exports. Exit code 2 and messages when the design is
 * broken or can't be built.
 */
import { parseArgs } from 'node:util'
import { readDesignFile, reportOn } from './designReport.ts'
import { writeExports } from './writeExports.ts'

const USAGE =
  'npm run --silent report -- DESIGN.json [--out DIR] [--units mm|in] [--paper a4|letter] ' +
  '[--date YYYY-MM-DD]'

const OPTIONS = {
  out: { type: 'string' },
  units: { type: 'string', default: 'mm' },
  paper: { type: 'string', default: 'a4' },
  date: { type: 'string', default: new Date().toISOString().slice(0, 10) },
} as const

const run = async (): Promise<readonly string[]> => {
  const { positionals, values } = parseArgs({ allowPositionals: true, options: OPTIONS })
  const [file, more] = positionals
  const { units, paper, date, out } = values
  if (file === undefined || more !== undefined) return [USAGE]
  if (units !== 'mm' && units !== 'in') return [USAGE]
  if (paper !== 'a4' && paper !== 'letter') return [USAGE]
  const read = readDesignFile(file)
  if (read.kind === 'bad') return read.messages
  const made = reportOn(read.design, read.warnings)
  if (made.kind === 'bad') return made.messages
  if (out !== undefined) await writeExports(made.input, { folder: out, units, paper, date })
  process.stdout.write(`${JSON.stringify(made.report, undefined, 2)}\n`)
  return []
}

const complain = (messages: readonly string[]): void => {
  if (messages.length === 0) return
  process.stderr.write(`${messages.join('\n')}\n`)
  process.exitCode = 2
}

run().then(complain, (error: unknown) => {
  complain([error instanceof Error ? error.message : String(error)])
})
