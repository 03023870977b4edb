/**
 * `npm run bench`: how long a design takes to its report, and whether that grows with the frames; the
 * conduction solver by size, beside a plain one; then the cutting planners against known answers.
 * `npm run bench -- cutting` runs the last alone; `report` and `field` are the others.
 */
import { spawnSync } from 'node:child_process'
import { mkdirSync, readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { benchCutting } from './benchCutting.ts'
import { benchField } from './benchField.ts'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const results = join(root, 'test-results/bench.json')

interface Group {
  readonly fullName: string
  readonly benchmarks: readonly {
    readonly name: string
    readonly median: number
    readonly min: number
  }[]
}

const measure = (): readonly Group[] => {
  mkdirSync(dirname(results), { recursive: true })
  const args = [
    join(root, 'node_modules/vitest/vitest.mjs'),
    'bench',
    '--run',
    '--no-file-parallelism',
    '--outputJson',
    results,
  ]
  const { status } = spawnSync(process.execPath, args, {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
  })
  if (status !== 0) throw new Error('The benchmarks did not run.')
  const { files }: { files: readonly { groups: readonly Group[] }[] } = JSON.parse(
    readFileSync(results, 'utf8'),
  )
  return files.flatMap((file) => file.groups)
}

const framesIn = (name: string): number => Number(/^(\d+) frames$/.exec(name)?.[1] ?? Number.NaN)

const column = (text: string, width = 12): string => text.padStart(width)

/**
 * The best and the median run; for a row of frame counts also the best for each frame, and that as a
 * share of the first row's: 1 or less means that time grows no faster than the hive. The best run is
 * the one that other programs disturbed least.
 */
const printGroup = ({ fullName, benchmarks }: Group): void => {
  const isByFrames = benchmarks.every(({ name }) => framesIn(name) > 0)
  const head = ['best ms', 'median ms', ...(isByFrames ? ['ms a frame', 'to first'] : [])]
  const [, title = fullName] = fullName.split(' > ')
  console.log(`\n${title.padEnd(20)}${head.map((text) => column(text)).join('')}`)
  const perFrame = benchmarks.map(({ name, min }) => min / framesIn(name))
  benchmarks.forEach(({ name, median, min }, i) => {
    const mine = perFrame[i] ?? Number.NaN
    const ratio = mine / (perFrame[0] ?? Number.NaN)
    const more = isByFrames ? [mine.toFixed(4), ratio.toFixed(2)] : []
    const cells = [min.toFixed(3), median.toFixed(3), ...more]
    console.log(name.padEnd(20) + cells.map((text) => column(text)).join(''))
  })
}

const BENCHES: Readonly<Record<string, () => void>> = {
  report: () => {
    for (const group of measure()) printGroup(group)
  },
  field: () => benchField(root),
  cutting: benchCutting,
}

const wished = process.argv.slice(2)
const unknown = wished.filter((name) => !Object.hasOwn(BENCHES, name))
if (unknown.length > 0) {
  console.error(`No benchmark ${unknown.join(', ')}; there are ${Object.keys(BENCHES).join(', ')}.`)
  process.exitCode = 2
} else {
  for (const [name, run] of Object.entries(BENCHES)) {
    if (wished.length > 0 && !wished.includes(name)) continue
    run()
    console.log()
  }
}
