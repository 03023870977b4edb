import { solveLumber } from '../src/solvers/cutting/lumber/solveLumber.ts'
import { solveSheets } from '../src/solvers/cutting/sheets/solveSheets.ts'
import { describeLumberPlan, describeSheetPlan } from './cutAnswer.ts'
import type { CutFile } from './cutFile.ts'
import { solveFor } from './solveFor.ts'

/** Plans as the cut command prints them, and what can't be cut. */
export interface CutPlans {
  readonly plans: {
    readonly lumber?: ReturnType<typeof describeLumberPlan>
    readonly sheets?: ReturnType<typeof describeSheetPlan>
  }
  readonly refusals: readonly string[]
}

/** Plans the boards, then the sheets, in so much time together. */
export const planCuts = ({ lumber, sheets }: CutFile, limitMs: number): CutPlans => {
  // Boards are mostly done at once; sheets always get at least half of the time.
  const boardMs = sheets === undefined ? limitMs : limitMs / 2
  const boards = lumber && solveFor(solveLumber(lumber), boardMs)
  const leftMs = limitMs - (boards?.milliseconds ?? 0)
  const panels = sheets && solveFor(solveSheets(sheets), leftMs)
  return {
    plans: {
      ...(lumber && boards?.result.kind === 'plan'
        ? { lumber: describeLumberPlan(lumber, boards.result, boards.milliseconds) }
        : {}),
      ...(sheets && panels?.result.kind === 'plan'
        ? { sheets: describeSheetPlan(sheets, panels.result, panels.milliseconds) }
        : {}),
    },
    refusals: [
      ...(boards?.result.kind === 'refused' ? [`lumber: ${boards.result.message}`] : []),
      ...(panels?.result.kind === 'refused' ? [`sheets: ${panels.result.message}`] : []),
    ],
  }
}
