import type { SetUp, SetUpRow } from '../../../reports/shop/setups/setUpReport.ts'
import type { Ticks } from '../../../store/benchTicks.ts'

/**
 * What a row's ticks are kept under: the setting, the stock and the part, not the number of the card.
 * They outlive a change of the order of work, and fall away when the setting itself changes.
 */
export const tickKey = (design: string, setUp: SetUp, row: SetUpRow): string => {
  const { kind, tool, setting, stock } = setUp
  const size = setting.kind === 'angle' ? setting.deg : setting.mm
  return [design, kind, tool, setting.kind, size, stock, row.label, row.name].join('|')
}

/** Pieces of a row that are ticked, never more than there are. */
export const ticksOf = (ticks: Ticks, key: string, count: number): number =>
  Math.min(ticks[key] ?? 0, count)

/** Whether every piece of every row is ticked. */
export const isSetUpDone = (ticks: Ticks, design: string, setUp: SetUp): boolean =>
  setUp.rows.length > 0 &&
  setUp.rows.every((row) => ticksOf(ticks, tickKey(design, setUp, row), row.count) === row.count)
