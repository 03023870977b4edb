/** `npm run check:size`: what a first visit loads before the hive shows, gzipped, against its budget. */
import { readFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'

/** Start code, styles and scene; fonts and what is loaded when first used are not in it. */
const BUDGET_KB = 500

const dist = join(dirname(dirname(fileURLToPath(import.meta.url))), 'dist')

interface Chunk {
  readonly file: string
  readonly src?: string
  readonly isEntry?: boolean
  readonly isDynamicEntry?: boolean
  readonly imports?: readonly string[]
  readonly css?: readonly string[]
}

type Manifest = Readonly<Record<string, Chunk>>

/** Files of a chunk and of everything that it imports at once. */
const filesOf = (manifest: Manifest, key: string, seen: Set<string>): void => {
  const chunk = manifest[key]
  if (chunk === undefined) throw new Error(`The build's manifest has no chunk ${key}.`)
  if (seen.has(chunk.file)) return
  for (const file of [chunk.file, ...(chunk.css ?? [])]) seen.add(file)
  for (const imported of chunk.imports ?? []) filesOf(manifest, imported, seen)
}

const gzippedKb = (file: string): number => gzipSync(readFileSync(join(dist, file))).length / 1000

const isFirst = ({ isEntry, isDynamicEntry, src }: Chunk): boolean =>
  isEntry === true || (isDynamicEntry === true && /^src\/scene\//.test(src ?? ''))

const manifest: Manifest = JSON.parse(readFileSync(join(dist, '.vite/manifest.json'), 'utf8'))
const files = new Set<string>()
for (const [key, chunk] of Object.entries(manifest))
  if (isFirst(chunk)) filesOf(manifest, key, files)

const sizes = [...files].map((file) => ({ file, kb: gzippedKb(file) })).sort((a, b) => b.kb - a.kb)
for (const { file, kb } of sizes) console.log(`${kb.toFixed(1).padStart(7)} kB  ${file}`)
const total = sizes.reduce((sum, { kb }) => sum + kb, 0)
console.log(
  `${total.toFixed(1).padStart(7)} kB  first load, gzipped; the budget is ${BUDGET_KB} kB`,
)
if (total >= BUDGET_KB) process.exitCode = 1
if (sizes.length === 0) throw new Error('The build has no entry.')
