import { seededRandom } from '../seededRandom.ts'
import { checkJob } from './checkJob.ts'
import { addCut, climbLadder, type Progress, quietly, type Search } from './climbLadder.ts'
import { describePlan } from './describePlan.ts'
import { downgrade } from './downgrade.ts'
import { THOROUGH } from './efforts.ts'
import { fewerBoards } from './fewerBoards.ts'
import { fewerPatterns } from './fewerPatterns.ts'
import { fillPurchase, type Spaces } from './fillPurchase.ts'
import { plainCost } from './firstFit.ts'
import { firstPlan } from './firstPlan.ts'
import { greedyPlan } from './greedyPlan.ts'
import { longerOffcut } from './longerOffcut.ts'
import type {
  LumberAnswer,
  LumberCertificate,
  LumberJob,
  LumberRefusal,
  LumberResult,
} from './lumberJob.ts'
import { normaliseJob } from './normaliseJob.ts'
import { createSpace } from './packingSpace.ts'
import { type Bar, costOf, type Problem } from './problem.ts'
import { startCuts } from './startCuts.ts'
import { trimCuts } from './trimCuts.ts'
import { verifyInSteps } from './verifyCertificate.ts'

/**
 * Plans the cheapest way to cut all parts from boards, then fewest boards. Each `next()` takes about
 * 20 ms at most; it yields the best answer so far when that got better, else undefined. The same job
 * gives the same answers.
 */
export function* solveLumber(job: LumberJob): Generator<LumberResult | undefined, LumberResult> {
  const refusal = checkJob(job)
  if (refusal !== undefined) return refusal
  const problem = normaliseJob(job)
  if (problem.demand.length === 0) return emptyAnswer
  const fit = createSpace(problem.weights, problem.caps)
  const low =
    problem.lowWeights === problem.weights ? fit : createSpace(problem.lowWeights, problem.caps)
  const spaces: Spaces = { low, fit }
  const random = seededRandom(1)
  const first = firstPlan(problem) ?? (yield* fillAll(problem, spaces, random))
  if ('kind' in first) return first
  const progress: Progress = { bars: first, cost: costOf(problem, first), bound: 0, cuts: [] }
  const plain = plainCost(problem) ?? progress.cost
  const answer = (certificate: LumberCertificate | undefined): LumberAnswer => ({
    kind: 'plan',
    patterns: describePlan(job, problem, progress.bars),
    price: progress.cost / problem.unitsPerMoney,
    bound: progress.bound / problem.unitsPerMoney,
    proven: certificate !== undefined,
    certificate,
    plainPrice: plain / problem.unitsPerMoney,
    boards: progress.bars.length,
  })
  yield answer(undefined)
  const search: Search = { problem, spaces, progress, random }
  for (const isBetter of prepare(search)) yield isBetter ? answer(undefined) : undefined
  for (const isBetter of climbLadder(search)) yield isBetter ? answer(undefined) : undefined
  const certificate = yield* prove(job, search)
  if (certificate !== undefined) yield answer(certificate)
  for (const steps of [fewerBoards(search), longerOffcut(search), fewerPatterns(search)]) {
    for (const isBetter of steps) yield isBetter ? answer(certificate) : undefined
  }
  return answer(certificate)
}

/** So many kinds make linear programmes slow: a better plan than first-fit comes first. */
const MANY_KINDS = 60
const GREEDY_PLANS = 3

/** A better plan where the ladder will take long, and the first cuts. Yields true when one of them helps. */
function* prepare({ problem, spaces, progress, random }: Search): Generator<boolean, void> {
  const plans = problem.demand.length > MANY_KINDS ? GREEDY_PLANS : 0
  for (let plan = 0; plan < plans; plan++) {
    const bars = yield* quietly(greedyPlan(problem, spaces.fit, random))
    if (bars === undefined) continue
    const moved = downgrade(problem, bars)
    if (costOf(problem, moved) >= progress.cost) continue
    progress.bars = moved
    progress.cost = costOf(problem, moved)
    yield true
  }
  for (const cut of startCuts(problem, spaces.low)) {
    yield cut !== undefined && addCut(problem, progress, cut)
  }
}

function* prove(
  job: LumberJob,
  { problem, progress }: Search,
): Generator<undefined, LumberCertificate | undefined> {
  if (progress.bound < progress.cost) return undefined
  const cuts = yield* trimCuts(problem, progress.cuts, progress.cost)
  if (cuts === undefined) return undefined
  const kindOfPart = job.parts.map((_, part) =>
    problem.members.findIndex((parts) => parts.includes(part)),
  )
  const certificate: LumberCertificate = {
    priceUnits: progress.cost,
    duals: cuts.map(({ values }) => kindOfPart.map((kind) => values[kind] ?? 0)),
  }
  const price = progress.cost / problem.unitsPerMoney
  return (yield* verifyInSteps(job, price, certificate)) ? certificate : undefined
}

/** Whether all boards there are hold the pieces, where first-fit found no way. */
function* fillAll(
  problem: Problem,
  spaces: Spaces,
  random: () => number,
): Generator<undefined, Bar[] | LumberRefusal> {
  const task = { boards: problem.limits, demand: problem.demand }
  const answer = yield* fillPurchase(spaces, task, THOROUGH, random)
  if (answer.kind === 'filled') return downgrade(problem, answer.bars)
  const message =
    answer.kind === 'open'
      ? 'No way was found to get all parts out of these boards, though there may be one. Add a board.'
      : 'These boards can’t hold all parts. Add boards, or raise how many there are.'
  return { kind: 'refused', reason: 'not-enough', parts: problem.members.flat(), message }
}

const emptyAnswer: LumberAnswer = {
  kind: 'plan',
  patterns: [],
  price: 0,
  bound: 0,
  proven: true,
  certificate: { priceUnits: 0, duals: [] },
  plainPrice: 0,
  boards: 0,
}
