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

const LENGTH = 'export interface Length { readonly mm: number }\n'
const PART = "import type { Length } from '../units/length.ts'\nexport type Part = Length\n"

describe('the import rules', () => {
  it('allow imports in the one direction', () => {
    const sources = {
      'src/units/length.ts': LENGTH,
      'src/hive/part.ts': PART,
      'src/panels/List.tsx':
        "import type { Part } from '../hive/part.ts'\nexport type List = Part[]\n",
    }
    expect(violationsIn(sources)).toEqual([])
  })

  it('report an import against the direction, even of a type', () => {
    const sources = {
      'src/units/length.ts':
        "import type { Part } from '../hive/part.ts'\nexport type Length = Part\n",
      'src/hive/part.ts': 'export interface Part { readonly id: string }\n',
      'src/scene/View.tsx':
        "import type { List } from '../panels/List.tsx'\nexport type View = List\n",
      'src/panels/List.tsx': 'export type List = readonly string[]\n',
    }
    expect(violationsIn(sources).toSorted()).toEqual([
      'layer-scene: src/scene/View.tsx -> src/panels/List.tsx',
      'layer-units: src/units/length.ts -> src/hive/part.ts',
    ])
  })

  it('report a package that a folder may not use, a cycle, and an import of nothing', () => {
    const sources = {
      'src/hive/part.ts': "import { create } from 'zustand'\nexport const part = create\n",
      'src/units/length.ts': "import { area } from './area.ts'\nexport const length = () => area\n",
      'src/units/area.ts':
        "import { length } from './length.ts'\nexport const area = () => length\n",
      'src/reports/report.ts': "import { lost } from './lost.ts'\nexport const report = lost\n",
    }
    const rules = violationsIn(sources).map((violation) => violation.split(':')[0])
    for (const rule of ['packages-hive', 'no-cycles', 'resolvable']) expect(rules).toContain(rule)
  })

  it('report Node and its packages in the pure core', () => {
    const sources = {
      'src/design/file.ts': "import { readFileSync } from 'node:fs'\nexport { readFileSync }\n",
    }
    expect(violationsIn(sources)).toEqual(['packages-design: src/design/file.ts -> fs'])
  })
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
