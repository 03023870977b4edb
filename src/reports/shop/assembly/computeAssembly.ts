import type { Design } from '../../../design/schema.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { Part } from '../../../hive/part.ts'
import { STEP } from '../../../hive/steps.ts'
import type { FastenerReport } from '../fasteners/fastenerReport.ts'
import type { CutListRow } from '../shopReport.ts'
import type { AssemblyReport, AssemblyStep } from './assemblyReport.ts'
import { fasteningStage } from './fasteningStage.ts'
import { measureDiagonal, SQUARE_RULE } from './glueUps.ts'
import { indexParts, isOfFramesOnly, type LookedParts } from './lookedParts.ts'
import { partLabels } from './partLabels.ts'
import { secondPerson } from './secondPerson.ts'
import type { StageFacts, StageRow, StageSpec } from './stage.ts'
import { STAGES } from './stageList.ts'
import { stepMinutes, TIME_RULE } from './stepMinutes.ts'

export interface AssemblyQuestion {
  readonly design: Design
  readonly hive: Hive
  readonly cutList: readonly CutListRow[]
  readonly fasteners: FastenerReport
}

/**
 * How the hive is built, step by step, and what is written on its parts. Stages that this hive has
 * nothing for are left out and the rest counted through. Linear in the number of parts.
 */
export const computeAssembly = (question: AssemblyQuestion): AssemblyReport => {
  const { hive, cutList } = question
  const partsByStage = groupByStage(hive.parts)
  const looked = indexParts(hive.parts, cutList)
  const rowsByStage = rowsOfStages(looked, cutList)
  const massByStage = new Map<number, number>()
  for (const [stage, { rows }] of rowsByStage) {
    massByStage.set(
      stage,
      rows.reduce((sum, { count, massKgEach }) => sum + count * massKgEach, 0),
    )
  }
  const massOf = (stages: readonly number[]): number =>
    stages.reduce((sum, stage) => sum + (massByStage.get(stage) ?? 0), 0)
  const fasten = question.design.shop.fastening === 'nails' ? 'nail' : 'screw'
  const steps = STAGES.flatMap((spec) => {
    const facts: StageFacts = {
      design: question.design,
      hive,
      finish: question.fasteners.finish,
      parts: partsByStage.get(spec.stage) ?? [],
      rows: rowsByStage.get(spec.stage)?.rows ?? [],
      massOf,
      fasten,
    }
    const isDue = facts.parts.length > 0 || spec.isDue?.(facts) === true
    return isDue ? [buildStep(spec, facts, question)] : []
  })
  return {
    steps: steps.map((step, i) => ({ ...step, number: i + 1 })),
    labels: partLabels(looked, cutList, question.fasteners.fastenings),
    squareRule: SQUARE_RULE,
    timeRule: TIME_RULE,
  }
}

const groupByStage = (parts: readonly Part[]): ReadonlyMap<number, readonly Part[]> => {
  const byStage = new Map<number, Part[]>()
  for (const part of parts) {
    const before = byStage.get(part.step)
    if (before === undefined) byStage.set(part.step, [part])
    else before.push(part)
  }
  for (const list of byStage.values()) {
    // The last skin of a sandwich goes on when its filling is in.
    if (list.some(isClosing)) list.sort(closingLast)
  }
  return byStage
}

const isClosing = ({ id }: Part): boolean => id.endsWith('/skin-right')

/** Keeps the followers in order, each with its closing skin at its end. */
const closingLast = (a: Part, b: Part): number =>
  a.motion === 'follower' && b.motion === 'follower' && a.index === b.index
    ? Number(isClosing(a)) - Number(isClosing(b))
    : 0

type Counted = { -readonly [Key in keyof StageRow]: StageRow[Key] }

/** The rows of the cut list that each stage takes from, and how many of each. */
const rowsOfStages = (
  { partById }: LookedParts,
  cutList: readonly CutListRow[],
): ReadonlyMap<number, { readonly rows: readonly StageRow[] }> => {
  const byStage = new Map<number, { readonly rows: Counted[] }>()
  const add = (stage: number, { label, name, massKgEach }: CutListRow, count: number): void => {
    const entry = byStage.get(stage) ?? { rows: [] }
    byStage.set(stage, entry)
    const last = entry.rows.at(-1)
    if (last?.label === label) last.count += count
    else entry.rows.push({ label, name, massKgEach, count })
  }
  for (const row of cutList) {
    if (isOfFramesOnly(row)) add(STEP.frames, row, row.count)
    // Pieces of the other frames are not looked up.
    else for (const id of row.partIds) add(partById.get(id)?.step ?? STEP.frames, row, 1)
  }
  return byStage
}

const buildStep = (
  spec: StageSpec,
  facts: StageFacts,
  { design, fasteners }: AssemblyQuestion,
): Omit<AssemblyStep, 'number'> => {
  const fastenings = fasteners.fastenings.flatMap((f, i) =>
    fasteningStage(f) === spec.stage ? [i] : [],
  )
  const made = fastenings.flatMap((i) => fasteners.fastenings[i] ?? [])
  const glueUps = spec.glueUps?.(facts) ?? []
  const lift = spec.lift?.(facts)
  // While no fastening says otherwise, what can be glued is glued.
  const isGlued = made.length === 0 || made.some((f) => f.glue)
  const glueHours = isGlued ? (spec.glueHours ?? 0) : 0
  const heaviestKg = facts.rows.reduce((most, row) => Math.max(most, row.massKgEach), 0)
  return {
    stage: spec.stage,
    title: typeof spec.title === 'string' ? spec.title : spec.title(facts),
    partIds: facts.parts.map((p) => p.id),
    worksOn: (spec.worksOn?.(facts) ?? []).map((p) => p.id),
    pictured: (spec.pictured?.(facts) ?? []).map((p) => p.id),
    unit: spec.unit,
    scope: spec.scope,
    rows: facts.rows.map(({ label, name, count }) => ({ label, name, count })),
    instructions: spec.instructions(facts),
    fastenings,
    diagonals: glueUps.map(measureDiagonal),
    liftKg: lift?.massKg ?? heaviestKg,
    secondPerson: secondPerson(lift, design.keeper.comfortableLiftKg),
    cautions: spec.cautions?.(facts) ?? [],
    minutes: stepMinutes({
      parts: facts.parts.length,
      fasteners: made.reduce((sum, f) => sum + f.count, 0),
      squares: glueUps.length,
      perPart: spec.minutesPerPart,
      extra: spec.extraMinutes?.(facts) ?? [0, 0],
    }),
    waitHours: Math.max(glueHours, spec.otherWaitHours?.(facts) ?? 0),
    view: typeof spec.view === 'string' ? spec.view : spec.view(facts),
  }
}
