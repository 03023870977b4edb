import { type Cut, settingNumber, settingTenths } from './cut.ts'
import type { SetUpKind } from './setUpReport.ts'

/** Cuts that share one setting of one tool; the largest piece first. Never empty. */
export type SharedCuts = readonly [Cut, ...Cut[]]

/**
 * The order of work: sheets are broken down first, then all is ripped, brought to thickness and cut to
 * length; what shapes single parts follows; soft things last, when the pockets can be measured. Shop
 * custom: large before small, so that a spoiled part can become a smaller one.
 */
const ORDER: Readonly<Record<SetUpKind, number>> = {
  'break-down': 0,
  rip: 1,
  resaw: 2,
  plane: 3,
  crosscut: 4,
  bevel: 5,
  taper: 6,
  groove: 7,
  notch: 8,
  slot: 9,
  drill: 10,
  knife: 11,
  snips: 12,
}

/** Gathers cuts that one setting serves, each setting once, in the order of work. */
export const gatherCuts = (cuts: readonly Cut[]): readonly SharedCuts[] => {
  const byKey = new Map<string, [Cut, ...Cut[]]>()
  for (const cut of cuts) {
    const key = cutKey(cut)
    const before = byKey.get(key)
    if (before === undefined) byKey.set(key, [cut])
    else before.push(cut)
  }
  return [...byKey.values()].map(largestFirst).sort(compareShared)
}

/** A fence that stands right stands right for every stock, so the stock is no part of the key. */
const cutKey = ({ kind, tool, setting, further }: Cut): string => {
  let key = `${kind}|${tool.words}|${settingTenths(setting)}`
  for (const other of further) key += `|${other.name} ${settingTenths(other.setting)}`
  return key
}

const largestFirst = (cuts: SharedCuts): SharedCuts => {
  if (cuts.length === 1) return cuts
  // A row that needs the same setting twice (two equal slots) is listed once.
  const distinct = [...new Map(cuts.map((cut) => [cut.row.label, cut])).values()]
  const [first = cuts[0], ...rest] = distinct.sort((a, b) => area(b) - area(a))
  return [first, ...rest]
}

const area = ({ row }: Cut): number => row.lengthMm * row.widthMm

const compareShared = ([a]: SharedCuts, [b]: SharedCuts): number =>
  ORDER[a.kind] - ORDER[b.kind] ||
  compareText(a.tool.words, b.tool.words) ||
  settingNumber(b.setting) - settingNumber(a.setting) ||
  furtherSum(b) - furtherSum(a)

const furtherSum = ({ further }: Cut): number =>
  further.reduce((sum, { setting }) => sum + settingNumber(setting), 0)

// Not localeCompare: the same design must give the same order on every machine.
const compareText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0)
