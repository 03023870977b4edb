import type { LumberResult } from '../solvers/cutting/lumber/lumberJob.ts'
import type { CutNode, SheetResult } from '../solvers/cutting/sheets/sheetJob.ts'
import type { HeadlessReport } from './headlessSchema.ts'
import type { LumberGroup, SheetGroup } from './shop/cutting/cuttingPlan.ts'
import type { ShopReport } from './shop/shopReport.ts'

type Described = HeadlessReport['shop']['cutting']

/** Jobs and plan of boards and sheets side by side, with the labels of the cut list. */
export const describeCutting = ({ cutting, plan }: ShopReport): Described => ({
  hives: cutting.hives,
  isFinal: plan?.isFinal ?? false,
  problems: cutting.problems,
  lumber: cutting.lumber.map((group, i) => describeLumber(group, plan?.lumber[i])),
  sheets: cutting.sheets.map((group, i) => describeSheets(group, plan?.sheets[i])),
})

const describeLumber = (
  { job, blanks, ...group }: LumberGroup,
  result: LumberResult | undefined,
): Described['lumber'][number] => ({
  ...group,
  kerfMm: job.kerfMm,
  trimMm: job.trimMm,
  stocks: job.stocks,
  blanks: blanks.map(({ name: _, ...blank }) => blank),
  ...(result?.kind === 'refused' && { refused: result.message }),
  ...(result?.kind === 'plan' && {
    price: result.price,
    bound: result.bound,
    proven: result.proven,
    plainPrice: result.plainPrice,
    boards: result.patterns.map(({ stock, count, pieces, offcutMm }) => ({
      stockId: job.stocks[stock]?.id ?? '',
      lengthMm: job.stocks[stock]?.lengthMm ?? 0,
      count,
      pieces: pieces.map(({ part, fromMm, lengthMm }) => {
        return { label: blanks[part]?.label ?? '', fromMm, lengthMm }
      }),
      offcutMm,
    })),
  }),
})

const describeSheets = (
  { job, labels, names: _, ...group }: SheetGroup,
  result: SheetResult | undefined,
): Described['sheets'][number] => ({
  ...group,
  kerfMm: job.kerfMm,
  trimMm: job.trimMm,
  stages: job.stages,
  stocks: job.stocks,
  parts: job.parts.map(({ id: _, ...part }, i) => ({ label: labels[i] ?? '', ...part })),
  ...(result?.kind === 'refused' && { refused: result.message }),
  ...(result?.kind === 'plan' && {
    price: result.price,
    bound: result.bound,
    proven: result.proven,
    boundBy: result.boundBy,
    sheets: result.layouts.map(({ stock, count, stages, pieces, offcuts, root }) => ({
      stockId: job.stocks[stock]?.id ?? '',
      lengthMm: job.stocks[stock]?.lengthMm ?? 0,
      widthMm: job.stocks[stock]?.widthMm ?? 0,
      count,
      stages,
      pieces: pieces.map(({ part, ...piece }) => ({ label: labels[part] ?? '', ...piece })),
      cuts: cutsOf(root),
      offcutsMm: offcuts,
    })),
  }),
})

type Cut = NonNullable<Described['sheets'][number]['sheets']>[number]['cuts'][number]

/** Each cut before those of the pieces that it makes. */
const cutsOf = (node: CutNode): readonly Cut[] => {
  if (node.kind !== 'cut') return []
  const { along, atMm, rect, isCarry, first, second } = node
  return [{ along, atMm, ofMm: rect, isCarry }, ...cutsOf(first), ...cutsOf(second)]
}
