import { quietly, type Search } from './climbLadder.ts'
import { isCutOff } from './dualCut.ts'
import { LIGHT } from './efforts.ts'
import { equalPurchases } from './equalPurchases.ts'
import { fillPurchase } from './fillPurchase.ts'

const MOST_TRIES = 30

/** Looks for an equally cheap plan with fewer boards, fewest first. Yields true when it found one. */
export function* fewerBoards(search: Search): Generator<boolean, void> {
  const { problem, spaces, progress, random } = search
  const purchases = yield* equalPurchases(search, progress.bars.length)
  let tries = 0
  for (const purchase of purchases) {
    if (progress.cuts.some((cut) => isCutOff(cut, purchase.boards))) continue
    tries++
    if (tries > MOST_TRIES) return
    const task = { boards: purchase.boards, demand: problem.demand }
    const answer = yield* quietly(fillPurchase(spaces, task, LIGHT, random))
    if (answer.kind === 'cut') progress.cuts.push(answer.cut)
    if (answer.kind !== 'filled') continue
    progress.bars = answer.bars
    yield true
    return
  }
}
