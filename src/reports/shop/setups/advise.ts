import { materialById } from '../../../catalog/materials.ts'
import type { CutListRow } from '../shopReport.ts'
import { settingNumber } from './cut.ts'
import type { SharedCuts } from './gatherCuts.ts'
import { LONGEST_STOP_MM, PUSH_STICK_MM, SHORTEST_RIP_MM } from './limits.ts'
import { GUIDED_SAW } from './toolProfile.ts'

/** Several alike against one stop come out equal; a stop far from the saw does not hold still. */
export const usesStopBlock = (cuts: SharedCuts, pieces: number): boolean => {
  const [{ kind, setting }] = cuts
  return kind === 'crosscut' && pieces > 1 && settingNumber(setting) <= LONGEST_STOP_MM
}

/**
 * What to mind at one setting, the test piece first. All of it common practice; the limits stand in
 * `limits.ts`, the cautions of the catalogue say the same.
 */
export const adviseSetUp = (cuts: SharedCuts, pieces: number): readonly string[] => [
  testPiece(cuts),
  ...byKind(cuts, pieces),
  ...byParts(cuts),
]

const testPiece = ([{ kind }]: SharedCuts): string => {
  switch (kind) {
    case 'drill':
      return 'Drill a test hole in a scrap first and try what goes through it.'
    case 'bevel':
    case 'taper':
      return 'Cut a test piece first and hold it where it goes.'
    default:
      return 'Cut a test piece first and measure it.'
  }
}

const byKind = (cuts: SharedCuts, pieces: number): readonly string[] => {
  const [{ kind, tool, setting }] = cuts
  const atTableSaw = tool.name === 'Table saw'
  switch (kind) {
    case 'break-down':
      return [...squareFirst(cuts), ...guideAdvice(cuts), ...shopAdvice(cuts)]
    case 'rip':
      return [
        ...squareFirst(cuts),
        ...guideAdvice(cuts),
        ...(atTableSaw ? [...fenceAdvice(settingNumber(setting)), ...shortParts(cuts)] : []),
      ]
    case 'resaw':
      return atTableSaw
        ? [
            ...fenceAdvice(settingNumber(setting)),
            'Saw boards that are higher than the blade from both edges, in several passes.',
            ...shortParts(cuts),
          ]
        : []
    case 'plane':
      return [
        'No planer? Have the yard plane it, or type the real thickness into the design.',
        'Plane the whole board before you cut it to length.',
      ]
    case 'crosscut':
      return [
        'Square one end of each piece first; that end goes against the stop.',
        ...(pieces > 1 && settingNumber(setting) > LONGEST_STOP_MM
          ? ['Too long for a stop: cut one, and mark the others from it.']
          : []),
        ...(atTableSaw ? [NEVER_BOTH] : []),
      ]
    case 'bevel':
    case 'groove':
      return atTableSaw ? [...alongGrain(cuts), ...shortParts(cuts)] : []
    case 'taper':
      return ['Cut all from one marked pattern, so that the roof lies flat on them.']
    case 'notch':
      return ['Mark the face and the end that the notch belongs to on every piece.']
    case 'slot':
      return ['Drill both ends first, then saw from hole to hole.', THROUGH]
    case 'drill':
      return ['Lay a scrap underneath, so that the hole does not break out.', THROUGH]
    case 'knife':
      return isFoam(cuts) ? ['Measure each pocket before you cut what fills it.', FOAM] : []
    case 'snips':
      return ['Wear gloves, and file the cut edges.']
  }
}

const NEVER_BOTH = 'Never use the rip fence and the mitre gauge together.'
const THROUGH = 'Where a hole goes through several layers, mark it through the first.'
const FOAM = 'Score thick board deeply from both faces and snap it, or use a fine saw.'

const squareFirst = (cuts: SharedCuts): readonly string[] =>
  cuts.some(({ row }) => materialById(row.material).family !== 'wood')
    ? ['Factory edges are neither straight nor square: trim one first and measure from it.']
    : ['Make one edge straight first; measure from that edge.']

const guideAdvice = ([{ tool }]: SharedCuts): readonly string[] =>
  tool === GUIDED_SAW
    ? [
        'Clamp the guide on the waste side, at its own figure from the edge that you measure from. The saw cuts between guide and line, so the cut is lost from the waste.',
        'Try the offset: cut a scrap along the guide and measure from the guide to the piece that you keep.',
        'Carry the whole sheet or board on battens, so that nothing drops or pinches.',
      ]
    : []

const shopAdvice = ([{ tool }]: SharedCuts): readonly string[] =>
  tool.name === 'Panel saw at the shop'
    ? [
        'Have all pieces of one size cut at one setting, and measure each before you leave.',
        'Keep shop-cut edges away from bee spaces, or plane them to the line at home.',
      ]
    : []

const fenceAdvice = (mm: number): readonly string[] => [
  ...(mm < PUSH_STICK_MM ? ['Push with a stick; keep the riving knife on.'] : []),
  NEVER_BOTH,
]

const shortParts = (cuts: SharedCuts): readonly string[] => {
  const short = cuts.filter(
    ({ row }) => materialById(row.material).family === 'wood' && row.lengthMm < SHORTEST_RIP_MM,
  )
  return short.length === 0
    ? []
    : [
        `Never feed a piece shorter than ${SHORTEST_RIP_MM} mm along the fence: cut the long board first and ${labelsOf(short)} off it after.`,
      ]
}

const alongGrain = ([{ tool }]: SharedCuts): readonly string[] =>
  tool.words.includes('sled')
    ? []
    : ['Better still: do this on the long strip, before it is cut to length.']

const isFoam = (cuts: SharedCuts): boolean =>
  cuts.some(({ row }) => materialById(row.material).family === 'insulation')

const byParts = (cuts: SharedCuts): readonly string[] => {
  const fitted = cuts.filter(({ row }) => isFitted(row))
  const handed = cuts.filter(({ row }) => row.hand !== 'none')
  return [
    ...(handed.length > 1
      ? [`Cut left and right hands one after the other: ${labelsOf(handed)}.`]
      : []),
    ...(fitted.length > 0 && SIZES.has(cuts[0].kind)
      ? [`Last, when the box stands and you have measured where they go: ${labelsOf(fitted)}.`]
      : []),
  ]
}

/** The kinds of cut that give a part its size. */
const SIZES: ReadonlySet<string> = new Set(['break-down', 'rip', 'crosscut'])

/** Parts that must fit into or on the built box; an error of the box would spoil them. */
const isFitted = ({ groups }: CutListRow): boolean =>
  groups.every((group) => group === 'covers' || group === 'boards' || group === 'openings')

const labelsOf = (cuts: readonly { readonly row: CutListRow }[]): string =>
  cuts.map(({ row }) => row.label).join(', ')
