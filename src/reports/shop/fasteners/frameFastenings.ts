import { POINT_COVER_MM } from '../../../catalog/fastenerRules.ts'
import { FRAME_NAIL_FINISH, SCREW_FINISH } from '../../../catalog/fastenerSizes.ts'
import type { Design } from '../../../design/schema.ts'
import type { Part } from '../../../hive/part.ts'
import type { Fastening, LooseJoint } from './fastenerReport.ts'

/** Pieces of all frames by their name within a frame: one frame is looked at, all are counted. */
type Pieces = ReadonlyMap<string, readonly Part[]>

interface Found {
  readonly fastenings: readonly Fastening[]
  readonly loose: readonly LooseJoint[]
}

const NAIL_LENGTHS = [20, 25, 30, 35]
const SOURCE =
  'common practice for hive frames, from memory; thin bars want a sharp bit or blunted nails'

/**
 * Nails of the frames, and what joins the halves of split ones. Two nails down through the top bar into
 * each side bar, one sideways through the side bar into the top bar, so that the comb's weight never
 * hangs on end grain alone; two through each side bar into the bottom bar.
 */
export const frameFastenings = (
  design: Design,
  parts: readonly Part[],
  labelOf: (partId: string) => string,
): Found => {
  const pieces = piecesOf(parts)
  const halves = design.frame.form === 'split' ? ['upper-', 'lower-'] : ['']
  const rows = halves.flatMap((half) => halfRows(pieces, half, labelOf))
  const split = splitRows(design, pieces, labelOf)
  return { fastenings: [...rows, ...split.fastenings], loose: split.loose }
}

/** All frames have the same pieces in the same order, so only the first one's names are read. */
const piecesOf = (parts: readonly Part[]): Pieces => {
  const all = parts.filter((part) => part.group === 'frames')
  const each = all.findIndex((part) => part.index !== all[0]?.index)
  const step = each < 0 ? all.length : each
  const pieces = new Map<string, readonly Part[]>()
  all.slice(0, step).forEach((part, k) => {
    const same: Part[] = []
    for (let i = k; i < all.length; i += step) {
      const other = all[i]
      if (other !== undefined) same.push(other)
    }
    pieces.set(part.id.slice(part.id.indexOf('/') + 1), same)
  })
  return pieces
}

const halfRows = (
  pieces: Pieces,
  half: string,
  labelOf: (partId: string) => string,
): readonly Fastening[] => {
  const all = (name: string) => pieces.get(half + name) ?? []
  const [top, sides, bottom] = [
    all('top-bar'),
    [...all('side-bar-back'), ...all('side-bar-front')],
    all('bottom-bar'),
  ]
  const [bar, side, low] = [top[0], sides[0], bottom[0]]
  if (bar === undefined || side === undefined || low === undefined) return []
  const words = half === 'upper-' ? ', upper half' : half === 'lower-' ? ', lower half' : ''
  const row = (spec: {
    head: Part
    point: Part
    joint: string
    each: number
    passed: number
    depth: number
    ids: readonly Part[]
  }) =>
    frameRow({ ...spec, joint: `${spec.joint}${words}`, labelOf, count: spec.each * sides.length })
  const barThick = bar.size.thickness
  const sideThick = side.size.thickness
  return [
    row({
      head: bar,
      point: side,
      joint: `${bar.name} down into side bar`,
      each: 2,
      passed: barThick,
      depth: side.size.length,
      ids: [...top, ...sides],
    }),
    row({
      head: side,
      point: bar,
      joint: `Side bar sideways into ${bar.name.toLowerCase()}`,
      each: 1,
      passed: sideThick,
      depth: bar.size.length,
      ids: [...top, ...sides],
    }),
    row({
      head: side,
      point: low,
      joint: 'Side bar into bottom bar',
      each: 2,
      passed: sideThick,
      depth: low.size.length,
      ids: [...sides, ...bottom],
    }),
  ].flat()
}

const frameRow = (spec: {
  readonly head: Part
  readonly point: Part
  readonly joint: string
  readonly count: number
  readonly passed: number
  readonly depth: number
  readonly ids: readonly Part[]
  readonly labelOf: (partId: string) => string
}): Fastening => {
  const { head, point, passed, depth } = spec
  // Two thirds of the nail in the second piece where a usual length does it (howstuffworks.com/nails).
  const fits = NAIL_LENGTHS.filter((l) => l > passed && l - passed <= depth - 3)
  const length = fits.find((l) => l >= NAIL_WANTED && l - passed >= 11) ?? fits.at(-1) ?? 20
  return {
    joint: spec.joint,
    step: point.step,
    labels: [spec.labelOf(head.id), spec.labelOf(point.id)],
    partIds: spec.ids.map((p) => p.id),
    fastener: { kind: 'nail', diameterMm: 1.4, lengthMm: length, finish: FRAME_NAIL_FINISH },
    count: spec.count,
    layers: [
      { name: head.name, thicknessMm: round(passed) },
      { name: point.name, thicknessMm: round(depth) },
    ],
    penetrationMm: round(length - passed),
    coverMm: round(depth - (length - passed)),
    spacingMm: 0,
    edgeMm: round(Math.min(head.size.thickness, point.size.thickness) / 2),
    endMm: 0,
    pilotMm: 0,
    clearanceHoleMm: 0,
    glue: true,
    rule: 'Glue and nails; the sideways nail carries the comb when the top bar is lifted',
    source: SOURCE,
    warning:
      length <= passed
        ? 'No usual frame nail reaches through this bar: use 35 mm panel pins, or thinner bars.'
        : undefined,
  }
}

/** One length for all joints of a frame where it fits, mm. */
const NAIL_WANTED = 30

const splitRows = (
  { frame }: Design,
  pieces: Pieces,
  labelOf: (partId: string) => string,
): Found => {
  const [upper, lower] = [pieces.get('upper-bottom-bar') ?? [], pieces.get('lower-top-bar') ?? []]
  const [head, point] = [upper[0], lower[0]]
  if (head === undefined || point === undefined || frame.joint === 'straps') return NOTHING
  const [a, b] = [head.size.thickness, point.size.thickness]
  const isPeg = frame.joint === 'pegs'
  const fits = SPLIT_SCREWS.filter((l) => l > a && l <= a + b - POINT_COVER_MM)
  const length = isPeg ? round(a + b) : fits.at(-1)
  const partIds = [...upper, ...lower].map((p) => p.id)
  const labels = [labelOf(head.id), labelOf(point.id)] as const
  const joint = 'Halves of a split frame'
  if (length === undefined) {
    const message = 'No usual screw is short enough for these bars: use pegs or straps.'
    return { fastenings: [], loose: [{ joint, labels, partIds, glue: false, message }] }
  }
  const penetration = length - a
  const fastening: Fastening = {
    joint,
    step: point.step,
    labels,
    partIds,
    fastener: isPeg
      ? { kind: 'peg', diameterMm: 8, lengthMm: length, finish: 'hardwood' }
      : { kind: 'screw', diameterMm: 3, lengthMm: length, finish: SCREW_FINISH },
    count: 2 * upper.length,
    layers: [
      { name: head.name, thicknessMm: round(a) },
      { name: point.name, thicknessMm: round(b) },
    ],
    penetrationMm: round(penetration),
    coverMm: round(b - penetration),
    spacingMm: 0,
    edgeMm: round(Math.min(head.size.width, point.size.width) / 2),
    endMm: 0,
    pilotMm: isPeg ? 8 : 2,
    clearanceHoleMm: isPeg ? 0 : 3.5,
    glue: false,
    rule: isPeg
      ? 'Pegs cut to both bars together, so that nothing stands out into the bee space; push fit, no glue'
      : 'From above, before the foundation goes in; the halves must part for the extractor',
    source: 'project choice: the joint must part by hand',
    warning:
      !isPeg && penetration < 9
        ? `Only ${round(penetration)} mm of wood holds the point. Thicker bars, pegs or straps hold better.`
        : undefined,
  }
  return { fastenings: [fastening], loose: [] }
}

/** Lengths of 3 mm screws. */
const SPLIT_SCREWS = [12, 16, 20, 25, 30, 35, 40]
const NOTHING: Found = { fastenings: [], loose: [] }

const round = (value: number): number => Math.round(value * 10) / 10
