import { formatTrimmed } from '../../../units/number.ts'
import { settingNumber } from './cut.ts'
import type { SharedCuts } from './gatherCuts.ts'
import { HAND_PLANED_MM, NARROW_STRIP_MM, WIDEST_RESAW_MM } from './limits.ts'
import type { SetUp } from './setUpReport.ts'
import type { ToolProfile } from './toolProfile.ts'

/** Why the builder's tools can't make a cut safely, and what to do instead; undefined when they can. */
export const findProblem = (cuts: SharedCuts, tools: ToolProfile): SetUp['problem'] => {
  const found = tools === 'table-saw' ? atTableSaw(cuts) : byHand(cuts, tools)
  if (found === undefined) return undefined
  // Frames are sold ready made everywhere, so that is the shortest way out.
  return cuts.every(({ row }) => row.groups.includes('frames'))
    ? { ...found, wayOut: `Buy the frames ready made. Or: ${lowerFirst(found.wayOut)}` }
    : found
}

const atTableSaw = (cuts: SharedCuts): SetUp['problem'] =>
  cuts[0].kind === 'resaw' && cuts.some(({ row }) => row.widthMm > WIDEST_RESAW_MM)
    ? {
        message: 'The board is too wide to be sawn on edge.',
        wayOut: `Buy it ${planedTo(cuts)}, or have the yard resaw it.`,
      }
    : undefined

const byHand = (cuts: SharedCuts, tools: 'circular-saw' | 'hand-tools'): SetUp['problem'] => {
  const [{ kind, setting }] = cuts
  switch (kind) {
    case 'rip':
      if (tools === 'circular-saw' && settingNumber(setting) >= NARROW_STRIP_MM) return undefined
      return {
        message:
          tools === 'circular-saw'
            ? 'A hand-held saw tips over on so narrow a strip.'
            : 'A long cut along the grain is not a job for a handsaw.',
        wayOut: `Buy it ${planedTo(cuts)}, have the yard rip it, or borrow a table saw.`,
      }
    case 'resaw':
      return {
        message: 'A board on edge can not be sawn thinner with a hand-held saw.',
        wayOut: `Buy it ${planedTo(cuts)}, or borrow a table saw.`,
      }
    case 'plane':
      if (cuts.every(({ surplusMm = 0 }) => surplusMm <= HAND_PLANED_MM)) return undefined
      return {
        message: 'Planing boards thinner by hand takes long and is seldom even.',
        wayOut: `Buy it ${planedTo(cuts)}. Or keep the board as it is, and type its measured thickness into the design.`,
      }
    case 'taper':
      return tools === 'hand-tools' && cuts.some(({ row }) => row.groups.includes('roof'))
        ? {
            message: 'A long slanting cut is not a job for a handsaw.',
            wayOut: 'Order firrings cut to their fall from the yard, or choose a flat lid.',
          }
        : undefined
    case 'groove':
      return {
        message: 'The groove needs a table saw, a router or a plough plane.',
        wayOut: 'Borrow one, buy the bars ready grooved, or leave the wax foundation out.',
      }
    default:
      return undefined
  }
}

/** Up to this many sections are named; a yard's list has no room for more. */
const MOST_NAMED = 4

const planedTo = (cuts: SharedCuts): string => {
  const sections = [
    ...new Set(
      cuts.map(
        ({ row }) => `${formatTrimmed(row.thicknessMm, 1)} × ${formatTrimmed(row.widthMm, 1)}`,
      ),
    ),
  ]
  const named = sections.slice(0, MOST_NAMED).join(', ')
  return `planed to ${named}${sections.length > MOST_NAMED ? ' and so on' : ''} mm`
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1)
