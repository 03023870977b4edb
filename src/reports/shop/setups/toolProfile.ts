import type { Design } from '../../../design/schema.ts'
import type { Tool } from './cut.ts'
import type { SetUpKind } from './setUpReport.ts'

export type ToolProfile = Design['shop']['tools']

/** Kinds of cut whose tool hangs on the saw that the builder has. */
type ProfileKind = Exclude<SetUpKind, 'knife' | 'snips' | 'drill'>

const tool = (name: string, how?: string): Tool => ({
  name,
  words: how === undefined ? name : how.startsWith('and ') ? `${name} ${how}` : `${name}, ${how}`,
})

export const GUIDED_SAW: Tool = tool('Circular saw', 'along a guide')
export const HAND_PLANE: Tool = tool('Hand plane')
export const DRILL: Tool = tool('Drill')
export const KNIFE: Tool = tool('Knife and straightedge')
export const SCISSORS: Tool = tool('Scissors')
export const SNIPS: Tool = tool('Tin snips')
/** For insulation that is cut at a slant. */
export const FINE_SAW: Tool = tool('Fine saw', 'between two tapered strips')

const TABLE_SAW = 'Table saw'
const HANDSAW = 'Handsaw'

/** What makes which cut, by the saw that the builder has (common practice). */
const TOOLS: Readonly<Record<ToolProfile, Readonly<Record<ProfileKind, Tool>>>> = {
  'table-saw': {
    'break-down': GUIDED_SAW,
    rip: tool(TABLE_SAW, 'rip fence'),
    resaw: tool(TABLE_SAW, 'rip fence, board on edge'),
    plane: tool('Thickness planer'),
    crosscut: tool(TABLE_SAW, 'crosscut sled'),
    bevel: tool(TABLE_SAW, 'blade tilted'),
    taper: tool(TABLE_SAW, 'tapering jig'),
    groove: tool(TABLE_SAW, 'rip fence, blade low'),
    notch: tool(TABLE_SAW, 'crosscut sled, blade low'),
    slot: tool('Jigsaw'),
  },
  'circular-saw': {
    'break-down': GUIDED_SAW,
    rip: GUIDED_SAW,
    resaw: GUIDED_SAW,
    plane: HAND_PLANE,
    crosscut: tool('Circular saw', 'square and stop'),
    bevel: tool('Circular saw', 'base tilted'),
    taper: tool('Circular saw', 'guide on the slant'),
    groove: tool('Plough plane'),
    notch: tool(HANDSAW, 'and chisel'),
    slot: tool('Jigsaw'),
  },
  'hand-tools': {
    'break-down': tool('Panel saw at the shop'),
    rip: tool(HANDSAW, 'along the grain'),
    resaw: tool(HANDSAW, 'along the grain'),
    plane: HAND_PLANE,
    crosscut: tool(HANDSAW, 'mitre box and stop'),
    bevel: HAND_PLANE,
    taper: tool(HANDSAW, 'along the grain'),
    groove: tool('Plough plane'),
    notch: tool(HANDSAW, 'and chisel'),
    slot: tool('Keyhole saw'),
  },
}

/** The ends of a splayed leg are bevelled across the grain, as a crosscut at an angle. */
const END_BEVEL: Readonly<Record<ToolProfile, Tool>> = {
  'table-saw': tool(TABLE_SAW, 'crosscut sled, fence turned'),
  'circular-saw': tool('Circular saw', 'square turned'),
  'hand-tools': tool(HANDSAW, 'mitre box turned'),
}

/** Too large to be moved past a blade that stands still. */
const JIGSAW: Tool = tool('Jigsaw')

export const toolFor = (profile: ToolProfile, kind: ProfileKind): Tool => TOOLS[profile][kind]

export const endBevelTool = (profile: ToolProfile): Tool => END_BEVEL[profile]

/** A notch in a sheet: the sheet lies still and the saw moves. */
export const sheetNotchTool = (profile: ToolProfile): Tool =>
  profile === 'hand-tools' ? toolFor(profile, 'notch') : JIGSAW
