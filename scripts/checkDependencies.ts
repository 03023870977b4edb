/** `npm run check:deps`: the import rules, and a proof that they looked at the code. */
import { spawnSync } from 'node:child_process'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** With a TypeScript that it cannot read the tool finds no modules and calls that "no violations". */
const LEAST_MODULES = 50

const root = dirname(dirname(fileURLToPath(import.meta.url)))

interface Cruise {
  readonly modules: readonly { readonly source: string }[]
  readonly summary: {
    readonly violations: readonly {
      readonly from: string
      readonly to: string
      readonly rule: { readonly name: string; readonly severity: string }
      readonly comment?: string
    }[]
  }
}

const cruise = (): Cruise => {
  const tool = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs')
  const args = [tool, 'src', '--config', '.dependency-cruiser.mjs', '--output-type', 'json']
  const options = { cwd: root, encoding: 'utf8', maxBuffer: 1 << 28 } as const
  const { stdout, stderr } = spawnSync(process.execPath, args, options)
  if (!stdout.startsWith('{')) throw new Error(`The dependency check did not run:\n${stderr}`)
  return JSON.parse(stdout)
}

const { modules, summary } = cruise()
const { violations } = summary
const own = modules.filter((module) => module.source.startsWith('src/')).length
for (const { from, to, rule, comment = '' } of violations) {
  console.error(`${rule.severity} ${rule.name}: ${from} -> ${to} ${comment}`)
}
console.log(`${own} modules, ${violations.length} violations`)
if (own < LEAST_MODULES) console.error(`Fewer than ${LEAST_MODULES} modules: nothing was checked.`)
if (violations.length > 0 || own < LEAST_MODULES) process.exitCode = 1
