import type { SheetJob } from '../src/solvers/cutting/sheets/sheetJob.ts'
import { solveSheets } from '../src/solvers/cutting/sheets/solveSheets.ts'
import {
  readClassInstances,
  readMultisheetInstances,
  readPlantedInstances,
  readRealisticInstances,
  type Turning,
} from '../test/references/cutting/readInstances.ts'
import { checkSheetPlan } from '../test/solvers/cutting/checkSheetPlan.ts'
import type { CuttingTrial } from './cuttingTrial.ts'
import { solveFor, workClock } from './solveFor.ts'

interface Instance {
  readonly name: string
  readonly job: SheetJob
  readonly bestKnown: number
}

export const tryClasses = (turning: Turning): readonly CuttingTrial[] =>
  readClassInstances(turning).map((instance) => trySheets(instance, 1000))

export const tryMultisheet = (turning: Turning): readonly CuttingTrial[] =>
  readMultisheetInstances(turning).map((instance) => trySheets(instance, 1000))

/** Sheets that are full to a share from `least` up to `below`. */
export const tryPlanted = (least: number, below: number): readonly CuttingTrial[] =>
  readPlantedInstances()
    .filter(({ fill }) => fill >= least && fill < below)
    .map((instance) => trySheets(instance, 3000))

export const tryRealistic = (): readonly CuttingTrial[] =>
  readRealisticInstances().map((instance) => trySheets(instance, 1000))

const trySheets = ({ name, job, bestKnown }: Instance, limitMs: number): CuttingTrial => {
  const { result, ...time } = solveFor(solveSheets(job), limitMs, workClock)
  if (result.kind === 'refused') throw new Error(`${name}: ${result.message}`)
  const { price, bound, proven } = result
  return {
    name,
    price,
    bound,
    isProven: proven,
    bestKnown,
    plainPrice: undefined,
    faults: checkSheetPlan(job, result),
    isFalse: bound > bestKnown + 1e-6,
    time,
  }
}
