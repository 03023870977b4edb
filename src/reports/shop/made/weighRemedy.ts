import type { Design } from '../../../design/schema.ts'
import { applyChanges, type FieldEdit } from '../../../design/setField.ts'
import { deriveHive } from '../../../hive/deriveHive.ts'
import type { Part } from '../../../hive/part.ts'
import { proposeFix } from '../../checks/proposeFix.ts'
import { type Report, runReports } from '../../report.ts'
import type { MadeRemedy } from './madeReport.ts'
import { movedRows } from './movedRows.ts'
import { partSize, rowSize, SAME_SIZE_MM, type Size } from './partSize.ts'

/** The hive as it is planned, which every remedy is held against. */
export interface Bench {
  readonly design: Design
  readonly partById: ReadonlyMap<string, Part>
  readonly report: Report
  /** The real size of what is cut already. */
  readonly madeById: ReadonlyMap<string, Size>
}

/** The hive and report of a design; undefined when it can't be built. Takes a few milliseconds. */
export const layOutBench = (design: Design): Bench | undefined => {
  const result = deriveHive(design)
  if (result.kind === 'refused') return undefined
  return {
    design,
    partById: partsById(result.hive.parts),
    report: runReports(design, result.hive),
    madeById: new Map(design.made.map((made) => [made.partId, rowSize(made)])),
  }
}

interface RemedyIdea {
  readonly text: string
  readonly changes: readonly FieldEdit[]
  /** Whether the parts after the change are as they have to be. */
  readonly isRight: (partById: ReadonlyMap<string, Part>) => boolean
  /** Sides of made parts that may become what they are: 2 is thickness. */
  readonly mayFollow?: (part: Part, side: number) => boolean
}

/**
 * Tries a remedy on the whole hive: undefined when a field does not take its value, the hive can't be
 * built, the parts don't come out right, or a part that is made would have to be another size.
 */
export const weighRemedy = (
  bench: Bench,
  { text, changes, isRight, mayFollow }: RemedyIdea,
): MadeRemedy | undefined => {
  if (proposeFix(text, changes) === undefined) return undefined
  const design = applyChanges(bench.design, changes)
  const result = deriveHive(design)
  if (result.kind === 'refused') return undefined
  const partById = partsById(result.hive.parts)
  if (!isRight(partById) || !keepsMade(bench, partById, mayFollow)) return undefined
  const report = runReports(design, result.hive)
  return {
    text,
    changes,
    moved: movedRows(
      bench.report.shop.cutList,
      report.shop.cutList,
      new Set(bench.madeById.keys()),
    ),
    newlyFailed: newlyFailed(bench.report, report),
  }
}

/** Better first: no check newly failed, then few other rows, then a small change. */
export const compareRemedies = (
  a: { readonly remedy: MadeRemedy; readonly changeMm: number },
  b: { readonly remedy: MadeRemedy; readonly changeMm: number },
): number =>
  a.remedy.newlyFailed.length - b.remedy.newlyFailed.length ||
  movedCount(a.remedy) - movedCount(b.remedy) ||
  Math.abs(a.changeMm) - Math.abs(b.changeMm)

const movedCount = ({ moved }: MadeRemedy): number => new Set(moved.map(({ label }) => label)).size

const partsById = (parts: readonly Part[]): ReadonlyMap<string, Part> =>
  new Map(parts.map((part) => [part.id, part]))

/** A made part stays as planned, or comes nearer to what it really is. */
const keepsMade = (
  bench: Bench,
  after: ReadonlyMap<string, Part>,
  mayFollow: RemedyIdea['mayFollow'],
): boolean =>
  [...bench.madeById].every(([id, real]) => {
    const before = bench.partById.get(id)
    // A note of a part that the hive no longer has binds nothing.
    if (before === undefined) return true
    const then = after.get(id)
    if (then === undefined) return false
    const [was, is] = [partSize(before), partSize(then)]
    return real.every((mm, side) => {
      const off = Math.abs((is[side] ?? 0) - mm)
      const wasOff = Math.abs((was[side] ?? 0) - mm)
      return off <= Math.max(wasOff, SAME_SIZE_MM) + 1e-9 || mayFollow?.(before, side) === true
    })
  })

const newlyFailed = (before: Report, after: Report): readonly string[] => {
  const failed = new Set(
    before.checks.filter(({ verdict }) => verdict === 'fix').map(({ id }) => id),
  )
  return after.checks
    .filter(({ verdict, id }) => verdict === 'fix' && !failed.has(id))
    .map(({ title }) => title)
}
