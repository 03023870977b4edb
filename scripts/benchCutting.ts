import { type CuttingSummary, type CuttingTrial, summarize } from './cuttingTrial.ts'
import { tryKnownLumber, tryRandomLumber } from './lumberTrials.ts'
import { tryClasses, tryMultisheet, tryPlanted, tryRealistic } from './sheetTrials.ts'

interface BenchSet {
  readonly name: string
  readonly goal: string
  readonly run: () => readonly CuttingTrial[]
  readonly isMet: (summary: CuttingSummary) => boolean
}

const share = (part: number, { count }: CuttingSummary): number => part / count

/** What each set is to reach on an ordinary desktop computer. */
const SETS: readonly BenchSet[] = [
  {
    name: 'boards, known',
    goal: 'all proven, in 1 s',
    run: tryKnownLumber,
    isMet: (s) => s.proven === s.count && s.atBest === s.count,
  },
  {
    name: 'boards, random',
    goal: '98 % proven in 1 s, median 200 ms, p95 600 ms, gap 0.5 %, saving 3 %',
    run: () => tryRandomLumber(100),
    isMet: (s) =>
      share(s.proven, s) >= 0.98 &&
      s.medianMs <= 200 &&
      s.p95Ms <= 600 &&
      s.mostGap <= 0.5 &&
      (s.meanSaving ?? 0) >= 3,
  },
  {
    name: 'classes, fixed',
    goal: '90 % at best known in 1 s, 1 % more sheets in all',
    run: () => tryClasses('fixed'),
    isMet: (s) => share(s.atBest, s) >= 0.9 && (s.aboveBest ?? 0) <= 1,
  },
  {
    name: 'classes, turning',
    goal: '90 % at best known in 1 s, 1 % more sheets in all',
    run: () => tryClasses('turning'),
    isMet: (s) => share(s.atBest, s) >= 0.9 && (s.aboveBest ?? 0) <= 1,
  },
  {
    name: 'planted to 96 %',
    goal: 'all at the optimum in 3 s',
    run: () => tryPlanted(0, 0.96),
    isMet: (s) => s.atBest === s.count,
  },
  {
    name: 'planted to 98 %',
    goal: 'half at the optimum in 3 s',
    run: () => tryPlanted(0.96, 0.98),
    isMet: (s) => share(s.atBest, s) >= 0.5,
  },
  {
    name: 'planted fuller',
    goal: 'any at the optimum in 3 s, which nobody counts on',
    run: () => tryPlanted(0.98, Infinity),
    isMet: (s) => s.atBest > 0,
  },
  {
    name: 'realistic sheets',
    goal: '95 % at best known in 1 s, 60 % proven',
    run: tryRealistic,
    isMet: (s) => share(s.atBest, s) >= 0.95 && share(s.proven, s) >= 0.6,
  },
  {
    name: 'gcut, fixed',
    goal: '2 stages, beside best known',
    run: () => tryMultisheet('fixed'),
    isMet: () => true,
  },
  {
    name: 'gcut, turning',
    goal: '2 stages, beside best known',
    run: () => tryMultisheet('turning'),
    isMet: () => true,
  },
]

const HEADS = [
  'count',
  'at best',
  'proven',
  'false',
  'faulty',
  'median',
  'p95',
  'most ms',
  'first',
  'step',
  'gap %',
  'most %',
  'above %',
  'saving %',
]

/**
 * Solves each set of cutting instances against the clock and prints a line for each: how many reach the
 * least price known, how many are proven, proofs and plans that an independent check refuses, times
 * in ms of work, the gap to the own bound, all prices together above the least known, and the saving against
 * cutting without a plan.
 */
export const benchCutting = (): void => {
  console.log(`${'cutting plans'.padEnd(18)}${HEADS.map((head) => head.padStart(9)).join('')}`)
  for (const { name, goal, run, isMet } of SETS) {
    const trials = run()
    const summary = summarize(trials)
    const isSound = summary.falseProofs === 0 && summary.faulty === 0 && summary.firstMs <= 100
    console.log(`${name.padEnd(18)}${cells(summary).join('')}`)
    console.log(`  ${isMet(summary) && isSound ? 'met: ' : 'MISSED: '}${goal}`)
    printTrouble(trials)
  }
}

const cells = (s: CuttingSummary): readonly string[] =>
  [
    s.count,
    s.atBest,
    s.proven,
    s.falseProofs,
    s.faulty,
    s.medianMs.toFixed(0),
    s.p95Ms.toFixed(0),
    s.mostMs.toFixed(0),
    s.firstMs.toFixed(0),
    s.longestStepMs.toFixed(0),
    s.meanGap.toFixed(2),
    s.mostGap.toFixed(2),
    s.aboveBest?.toFixed(2) ?? '',
    s.meanSaving?.toFixed(2) ?? '',
  ].map((cell) => String(cell).padStart(9))

/** Names what must never be, and what fell short of the best known. */
const printTrouble = (trials: readonly CuttingTrial[]): void => {
  for (const { name, price, bound, bestKnown, isFalse, faults } of trials) {
    if (isFalse) console.log(`  FALSE ${name}: bound ${bound}, price ${price}, known ${bestKnown}`)
    for (const fault of faults.slice(0, 3)) console.log(`  FAULT ${name}: ${fault}`)
  }
  const short = trials.filter(({ price, bestKnown = Infinity }) => price > bestKnown + 1e-6)
  if (short.length === 0) return
  const list = short.map(({ name, price, bestKnown }) => `${name} ${price}/${bestKnown}`)
  console.log(`  above best known: ${list.join(', ')}`)
}
