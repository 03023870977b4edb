import { spawnSync } from 'node:child_process'
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { afterEach, describe, expect, it } from 'vitest'

const root = dirname(dirname(fileURLToPath(import.meta.url)))
const folders: string[] = []

afterEach(() => {
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true })
})

type Sources = Readonly<Record<string, string>>

/** The rules that a small project of these files breaks, each as `rule: from -> to`. */
const violationsIn = (sources: Sources): readonly string[] => {
  const folder = mkdtempSync(join(tmpdir(), 'rules-'))
  folders.push(folder)
  for (const file of ['.dependency-cruiser.mjs', 'tsconfig.json']) {
    copyFileSync(join(root, file), join(folder, file))
  }
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }')
  for (const [path, text] of Object.entries(sources)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true })
    writeFileSync(join(folder, path), text)
  }
  const tool = join(root, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs')
  const args = [tool, 'src', '--config', '.dependency-cruiser.mjs', '--output-type', 'json']
  const { stdout } = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' })
  const { summary } = JSON.parse(stdout)
  expect(summary.totalCruised).toBeGreaterThanOrEqual(Object.keys(sources).length)
  return summary.violations.map(
    (v: { rule: { name: string }; from: string; to: string }) =>
      `${v.rule.name}: ${v.from} -> ${v.to}`,
  )
}

/** Starting a process is slow on a busy machine. */
const PATIENCE_MS = 120_000

describe('the import rules', () => {
  it(
    'allow imports in the one direction',
    () => {
      const sources = {
        'src/units/length.ts': 'export interface Length { readonly mm: number }',
        'src/hive/part.ts': `import type { Length } from '../units/length.ts'
          export type Part = Length`,
        'src/panels/List.tsx': `import type { Part } from '../hive/part.ts'
          export type List = Part[]`,
      }
      expect(violationsIn(sources)).toEqual([])
    },
    PATIENCE_MS,
  )

  it(
    'report whatever goes another way',
    () => {
      const sources = {
        // Against the direction, even for a type alone.
        'src/units/length.ts': `import type { Part } from '../hive/part.ts'
          export type Length = Part`,
        // Side by side, where neither may know the other.
        'src/scene/View.tsx': `import type { List } from '../panels/List.tsx'
          export type View = List`,
        'src/panels/List.tsx': 'export type List = readonly string[]',
        // A package in the pure core, and Node itself.
        'src/hive/part.ts': `import { create } from 'zustand'
          export interface Part { readonly make: typeof create }`,
        'src/design/file.ts': `import { readFileSync } from 'node:fs'
          export const read = readFileSync`,
        // A circle, and an import of nothing.
        'src/geometry/box.ts': `import { area } from './area.ts'
          export const box = () => area`,
        'src/geometry/area.ts': `import { box } from './box.ts'
          export const area = () => box`,
        'src/reports/report.ts': `import { lost } from './lost.ts'
          export const report = lost`,
      }
      expect(new Set(violationsIn(sources))).toEqual(
        new Set([
          'layer-units: src/units/length.ts -> src/hive/part.ts',
          'layer-scene: src/scene/View.tsx -> src/panels/List.tsx',
          'packages-hive: src/hive/part.ts -> zustand',
          'packages-design: src/design/file.ts -> fs',
          'no-cycles: src/geometry/area.ts -> src/geometry/box.ts',
          'resolvable: src/reports/report.ts -> ./lost.ts',
          'resolvable: src/hive/part.ts -> zustand',
          'packages-reports: src/reports/report.ts -> ./lost.ts',
        ]),
      )
    },
    PATIENCE_MS,
  )
})

const read = (file: string): string => readFileSync(join(root, file), 'utf8')

describe('the documents', () => {
  const scripts: Readonly<Record<string, string>> = JSON.parse(read('package.json')).scripts

  it.each(['README.md', 'DEVELOPERS.md', '.ci/run'])(
    '%s names only commands that exist',
    (file) => {
      const named = [...read(file).matchAll(/npm run (?:--silent )?([a-z][a-z0-9:-]*)/g)].map(
        (m) => m[1],
      )
      const plain = [...read(file).matchAll(/npm (start|test)\b/g)].map((m) => m[1])
      expect([...named, ...plain].filter((name = '') => !(name in scripts))).toEqual([])
      expect(named.length + plain.length).toBeGreaterThan(0)
    },
  )

  it('DEVELOPERS.md has a paragraph on every folder of src', () => {
    const rules = read('.dependency-cruiser.mjs')
    const table = rules.slice(rules.indexOf('const mayImport'), rules.indexOf('const mayUse'))
    const layers = [...table.matchAll(/^ {2}([a-z]+):/gm)].map((m) => m[1] ?? '')
    expect(layers.length).toBeGreaterThan(8)
    const described = read('DEVELOPERS.md')
    expect(layers.filter((layer) => !described.includes(`\`${layer}/\``))).toEqual([])
  })

  it.each(['README.md', 'DEVELOPERS.md'])('%s names only files that exist', (file) => {
    const named = [...read(file).matchAll(/`((?:src|test|scripts|e2e|public)\/[\w./-]+\.\w+)`/g)]
    const missing = named.map((m) => m[1] ?? '').filter((path) => !isThere(path))
    expect(missing).toEqual([])
  })
})

const isThere = (path: string): boolean => {
  try {
    read(path)
    return true
  } catch {
    return false
  }
}
