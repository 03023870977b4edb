import type { Hive } from '../../../hive/hive.ts'
import type { PanelId } from '../../../hive/panelPlane.ts'
import type { Triple } from '../../../solvers/conduction/world.ts'
import { distanceToBox } from './distanceToBox.ts'
import type { HeatSide } from './hiveHeatModel.ts'
import { depthInside, deriveInnerPanels } from './innerPanels.ts'
import { PANEL_WORDS } from './panelWords.ts'

/**
 * Where a point of the inner surface is, in words that follow "it is": `where the front wall, the left
 * end wall and the floor meet`, `on the lid near the back wall`, `in the middle of the floor`. `side`
 * is what the surface there belongs to.
 */
export const describePlace = (
  hive: Pick<Hive, 'dimensions' | 'openings'>,
  point: Triple,
  side: HeatSide,
): string => {
  const byDistance = deriveInnerPanels(hive.dimensions)
    .map((panel) => ({ id: panel.id, depth: depthInside(panel, point) }))
    .sort((a, b) => a.depth - b.depth)
  const meeting = byDistance.filter(({ id, depth }) => id === side || depth <= MEETING)
  const opening = openingNear(hive, point)
  if (meeting.length > 1) {
    const names = WORD_ORDER.filter((id) => meeting.some((panel) => panel.id === id))
    const words = listed(names.map((id) => PANEL_WORDS[id]))
    // Three panels meet in one corner only; it needs no further help to be found.
    return `where ${words} meet${names.length > 2 ? '' : opening}`
  }
  const on = side === 'entrance' ? meeting[0]?.id : side
  if (on === undefined) return `at an opening`
  const near = byDistance.find(({ id, depth }) => id !== on && depth <= NEAR)
  if (opening !== '') return `on ${PANEL_WORDS[on]}${opening}`
  if (near !== undefined) return `on ${PANEL_WORDS[on]} near ${PANEL_WORDS[near.id]}`
  return `in the middle of ${PANEL_WORDS[on]}`
}

/** Panels whose inner faces are all this near to a point meet there, mm: a rebate is as wide. */
const MEETING = 25
const NEAR = 150
const NEAR_OPENING = 100

const openingNear = ({ openings }: Pick<Hive, 'openings'>, point: Triple): string => {
  const near = openings.find(({ tunnel }) => distanceToBox(point, tunnel) <= NEAR_OPENING)
  if (near === undefined) return ''
  return near.kind === 'entrance' ? ', near an entrance' : ', near a vent'
}

/** `the lid`, `a and b`, `a, b and c`. */
const listed = (names: readonly string[]): string => {
  const last = names.at(-1) ?? ''
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`
}

const WORD_ORDER = [
  'front-wall',
  'back-wall',
  'left-wall',
  'right-wall',
  'lid',
  'floor',
] as const satisfies readonly PanelId[]
