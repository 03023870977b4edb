import { readFileSync } from 'node:fs'
import type { LumberJob } from '../../../src/solvers/cutting/lumber/lumberJob.ts'
import type { SheetJob, SheetPart } from '../../../src/solvers/cutting/sheets/sheetJob.ts'

// The README beside this file tells where the instances come from.

/** A job for boards whose least price is known, in cents, with proof. */
export interface LumberInstance {
  readonly name: string
  readonly job: LumberJob
  readonly optimum: number
  /** Of the linear relaxation: below the optimum by up to 4 %. */
  readonly lpBound: number
  /** First-fit decreasing on the best single length. */
  readonly plainPrice: number
}

/** A job for sheets, and what is known of its least price. */
export interface SheetInstance {
  readonly name: string
  readonly job: SheetJob
  /** A price that was reached with guillotine cuts and the job's stages. */
  readonly bestKnown: number
  /** No plan with any number of stages costs less. */
  readonly bound: number
}

/** An instance of the classes, in sheets. */
export interface ClassInstance extends SheetInstance {
  /** The fewest sheets known when parts may lie anywhere: such a plan may not be sawable. */
  readonly bestKnownFree: number
}

/** Three sizes of sheet; the values hold for two stages only. */
export interface MultisheetInstance {
  readonly name: string
  readonly job: SheetJob
  readonly bestKnown: number
  readonly twoStageBound: number
}

export interface PlantedInstance extends SheetInstance {
  /** Share of the sheets' area that the parts with their saw cuts take, 0..1. */
  readonly fill: number
}

/** The most valuable set of parts from one sheet in two stages, the parts as often as they are there. */
export interface KnapsackInstance {
  readonly name: string
  readonly sheet: { readonly length: number; readonly width: number }
  readonly parts: readonly {
    readonly length: number
    readonly width: number
    readonly count: number
    readonly value: number
  }[]
  /** Optimum when the first cuts run along the sheet's length, so that strips are as long as it. */
  readonly firstAlongLength: number
  readonly firstAlongWidth: number
}

type Row = readonly number[]

/** `all parts fixed` or `all parts may turn`. */
export type Turning = 'fixed' | 'turning'

export const readLumberInstances = (): readonly LumberInstance[] =>
  readLines<LumberLine>('lumber').map(({ name, kerf, trim, stocks, parts, ...known }) => ({
    name,
    job: {
      stocks: stocks.map(([length = 0, price = 0]) => ({
        id: `board-${length}`,
        lengthMm: length,
        price,
      })),
      kerfMm: kerf,
      trimMm: trim,
      parts: parts.map(([length = 0, count = 0], i) => ({
        id: `part-${i}`,
        lengthMm: length,
        count,
      })),
    },
    ...known,
  }))

/** Three stages; each sheet costs 1. */
export const readClassInstances = (turning: Turning): readonly ClassInstance[] =>
  readLines<ClassLine>('classes').map(({ name, sheet, parts, ...known }) => ({
    name,
    job: sheetJob({ sheets: [[...sheet, 1]], parts, mayTurn: turning === 'turning' }),
    bestKnown: known[turning].threeStage,
    bestKnownFree: known[turning].free,
    bound: known[turning].bound,
  }))

/** Two stages. */
export const readMultisheetInstances = (turning: Turning): readonly MultisheetInstance[] =>
  readLines<MultisheetLine>('multisheet').map(({ name, sheets, parts, ...known }) => ({
    name,
    job: { ...sheetJob({ sheets, parts, mayTurn: turning === 'turning' }), stages: 2 },
    bestKnown: known[turning].twoStage,
    twoStageBound: known[turning].twoStageBound,
  }))

/** Any number of stages; prices in cents. */
export const readPlantedInstances = (): readonly PlantedInstance[] =>
  readLines<PlantedLine>('planted').map(({ name, optimum, fill, ...raw }) => ({
    name,
    job: { ...sheetJob(raw), stages: 'any' },
    bestKnown: optimum,
    bound: optimum,
    fill,
  }))

/** Any number of stages; prices in cents. */
export const readRealisticInstances = (): readonly SheetInstance[] =>
  readLines<RealisticLine>('realistic').map(({ name, bestKnown, bound, ...raw }) => ({
    name,
    job: { ...sheetJob(raw), stages: 'any' },
    bestKnown,
    bound,
  }))

export const readKnapsackInstances = (): readonly KnapsackInstance[] =>
  readLines<KnapsackLine>('knapsack').map(({ name, sheet, parts, ...known }) => {
    const [length = 0, width = 0] = sheet
    return {
      name,
      sheet: { length, width },
      parts: parts.map(([partLength = 0, partWidth = 0, count = 0, value = 0]) => ({
        length: partLength,
        width: partWidth,
        count,
        value,
      })),
      ...known,
    }
  })

interface RawSheets {
  readonly sheets: readonly Row[]
  readonly parts: readonly Row[]
  readonly kerf?: number
  readonly trim?: number
  /** For all parts; where it is left out, each part's row tells. */
  readonly mayTurn?: boolean
}

const sheetJob = ({ sheets, parts, kerf = 0, trim = 0, mayTurn }: RawSheets): SheetJob => ({
  stocks: sheets.map(([length = 0, width = 0, price = 0]) => ({
    id: `sheet-${length}x${width}`,
    lengthMm: length,
    widthMm: width,
    price,
  })),
  kerfMm: kerf,
  trimMm: trim,
  stages: 3,
  parts: parts.map(
    ([length = 0, width = 0, count = 0, turns = 0], i): SheetPart => ({
      id: `part-${i}`,
      lengthMm: length,
      widthMm: width,
      count,
      mayTurn: mayTurn ?? turns === 1,
    }),
  ),
})

const readLines = <Line>(name: string): readonly Line[] =>
  readFileSync(new URL(`${name}.jsonl`, import.meta.url), 'utf8')
    .trim()
    .split('\n')
    .map((line) => JSON.parse(line))

interface LumberLine {
  readonly name: string
  readonly kerf: number
  readonly trim: number
  readonly stocks: readonly Row[]
  readonly parts: readonly Row[]
  readonly optimum: number
  readonly lpBound: number
  readonly plainPrice: number
}

type ByTurning<Known> = Readonly<Record<Turning, Known>>

type ClassLine = {
  readonly name: string
  readonly sheet: Row
  readonly parts: readonly Row[]
} & ByTurning<{ readonly threeStage: number; readonly free: number; readonly bound: number }>

type MultisheetLine = {
  readonly name: string
  readonly sheets: readonly Row[]
  readonly parts: readonly Row[]
} & ByTurning<{ readonly twoStage: number; readonly twoStageBound: number }>

interface PlantedLine extends RawSheets {
  readonly name: string
  readonly optimum: number
  readonly fill: number
}

interface RealisticLine extends RawSheets {
  readonly name: string
  readonly bound: number
  readonly bestKnown: number
}

interface KnapsackLine {
  readonly name: string
  readonly sheet: Row
  readonly parts: readonly Row[]
  readonly firstAlongLength: number
  readonly firstAlongWidth: number
}
