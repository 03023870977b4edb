/**
 * `npm run --silent cut -- JOB.json`: what to buy and how to cut it, for boards, sheets or both, as one
 * JSON object. Exit code 2 and messages when the file is broken or the parts can't be cut from it.
 */
import { readFileSync } from 'node:fs'
import { parseArgs } from 'node:util'
import { readCutFile } from './cutFile.ts'
import { planCuts } from './planCuts.ts'

const USAGE = [
  'npm run --silent cut -- JOB.json [--seconds 10]',
  '  --seconds  time to look for better plans, in all; it ends earlier with a proof',
]

const OPTIONS = { seconds: { type: 'string', default: '10' } } as const

const run = (): readonly string[] => {
  const { positionals, values } = parseArgs({ allowPositionals: true, options: OPTIONS })
  const [path, more] = positionals
  const seconds = Number(values.seconds)
  if (path === undefined || more !== undefined) return USAGE
  if (!(seconds > 0 && seconds < Infinity)) return USAGE
  const read = readCutFile(readFileSync(path, 'utf8'))
  if (read.kind === 'bad') return read.messages
  for (const warning of read.warnings) process.stderr.write(`${warning}\n`)

  const { plans, refusals } = planCuts(read.file, 1000 * seconds)
  if (refusals.length > 0) return refusals
  process.stdout.write(`${JSON.stringify(plans, undefined, 2)}\n`)
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
