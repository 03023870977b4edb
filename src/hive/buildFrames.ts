import type { Design } from '../design/schema.ts'
import { type Box, box } from '../geometry/box.ts'
import { moveSolid } from '../geometry/moveSolid.ts'
import { boxSolid, type Solid } from '../geometry/solid.ts'
import type { Axis } from '../geometry/vector.ts'
import type { HiveDimensions } from './dimensions.ts'
import { UP } from './directions.ts'
import { makePart } from './makePart.ts'
import type { Operation, Part } from './part.ts'
import { STEP } from './steps.ts'

/** The shoulder that keeps combs apart takes the upper third of a side bar, at most this, mm. */
const LONGEST_SHOULDER = 80
const FOUNDATION_THICKNESS = 1
/** Grooves that hold the foundation sheet. 3 mm wide and deep: common practice in British frames. */
const GROOVE: Operation = { kind: 'groove', width: 3, depth: 3 }
const PEG_HOLES: Operation = { kind: 'holes', diameter: 8, count: 2 }

/** One frame, or one half of a split frame, between two heights. */
interface Half {
  readonly id: string
  readonly words: string
  readonly bottom: number
  readonly top: number
  readonly topBar: { readonly thickness: number; readonly width: number; readonly hasLugs: boolean }
  readonly pegged: 'none' | 'bottom-bar' | 'top-bar'
}

const middle = (x: number, width: number): [number, number] => [x - width / 2, x + width / 2]
const across = (length: number): [number, number] => [-length / 2, length / 2]

const topBarSolids = (design: Design, half: Half, x: number): readonly Solid[] => {
  const { frame } = design
  const xs = middle(x, half.topBar.width)
  const under = half.top - half.topBar.thickness
  if (!half.topBar.hasLugs)
    return [boxSolid(box(xs, [under, half.top], across(frame.bodyLengthMm)))]
  const lugFrom = half.top - frame.lugThicknessMm
  if (lugFrom === under) return [boxSolid(box(xs, [under, half.top], across(frame.topBarLengthMm)))]
  const [inner, end] = [frame.bodyLengthMm / 2, frame.topBarLengthMm / 2]
  return [
    boxSolid(box(xs, [under, half.top], [-inner, inner])),
    boxSolid(box(xs, [lugFrom, half.top], [inner, end])),
    boxSolid(box(xs, [lugFrom, half.top], [-end, -inner])),
  ]
}

const sideBarSolids = (design: Design, half: Half, x: number, z: [number, number]) => {
  const { frame } = design
  const top = half.top - half.topBar.thickness
  const height = top - half.bottom
  if (frame.shoulderWidthMm === frame.sideBarWidthMm)
    return [boxSolid(box(middle(x, frame.sideBarWidthMm), [half.bottom, top], z))]
  const shoulderFrom = top - Math.min(height / 3, LONGEST_SHOULDER)
  return [
    boxSolid(box(middle(x, frame.sideBarWidthMm), [half.bottom, shoulderFrom], z)),
    boxSolid(box(middle(x, frame.shoulderWidthMm), [shoulderFrom, top], z)),
  ]
}

/** What is sawn off both edges of a side bar below its shoulder. */
const shoulderNotches = ({ frame }: Design, half: Half): readonly Operation[] => {
  const depth = (frame.shoulderWidthMm - frame.sideBarWidthMm) / 2
  if (depth === 0) return []
  const height = half.top - half.topBar.thickness - half.bottom
  const width = height - Math.min(height / 3, LONGEST_SHOULDER)
  return [{ kind: 'notch', width, depth, count: 2 }]
}

const buildHalf = (
  design: Design,
  half: Half,
  x: number,
  hangsOn: readonly string[],
): readonly Part[] => {
  const { frame } = design
  const id = (piece: string) => `${FIRST}${half.id}${piece}`
  const part = (
    piece: string,
    name: string,
    grain: Axis | 'none',
    solids: readonly Solid[] | Box,
    fixedTo: readonly string[],
    operations: readonly Operation[] = [],
    material = 'pine',
  ): Part =>
    makePart({
      id: id(piece),
      name,
      group: 'frames',
      motion: 'frame',
      index: 0,
      material,
      grain,
      solids,
      fixedTo,
      operations,
      explode: { direction: UP, layer: 1 },
      step: STEP.frames,
      bought: material === 'beeswax-foundation',
    })
  const groove = frame.foundation ? [GROOVE] : []
  const body = frame.bodyLengthMm / 2
  const inner = body - frame.sideBarThicknessMm
  const notches: readonly Operation[] =
    half.topBar.hasLugs && frame.lugThicknessMm < half.topBar.thickness
      ? [
          {
            kind: 'notch',
            width: (frame.topBarLengthMm - frame.bodyLengthMm) / 2,
            depth: half.topBar.thickness - frame.lugThicknessMm,
            count: 2,
          },
        ]
      : []
  const pegs = (bar: Half['pegged']) =>
    half.pegged === bar && frame.joint === 'pegs' ? [PEG_HOLES] : []
  const bottomBarTop = half.bottom + frame.bottomBarThicknessMm
  const under = half.top - half.topBar.thickness
  const parts = [
    part(
      'top-bar',
      half.topBar.hasLugs ? 'Top bar' : 'Middle bar',
      'z',
      topBarSolids(design, half, x),
      hangsOn,
      [...notches, ...groove, ...pegs('top-bar')],
    ),
    ...([-1, 1] as const).map((side) =>
      part(
        side < 0 ? 'side-bar-back' : 'side-bar-front',
        `Side bar${half.words}`,
        'y',
        sideBarSolids(design, half, x, side < 0 ? [-body, -inner] : [inner, body]),
        [id('top-bar')],
        shoulderNotches(design, half),
      ),
    ),
    part(
      'bottom-bar',
      'Bottom bar',
      'z',
      box(middle(x, frame.bottomBarWidthMm), [half.bottom, bottomBarTop], [-inner, inner]),
      [id('side-bar-back'), id('side-bar-front')],
      pegs('bottom-bar'),
    ),
  ]
  if (frame.foundation)
    parts.push(
      part(
        'foundation',
        `Wax foundation${half.words}`,
        'none',
        box(middle(x, FOUNDATION_THICKNESS), [bottomBarTop, under], [-inner, inner]),
        [id('top-bar'), id('bottom-bar')],
        [],
        'beeswax-foundation',
      ),
    )
  return parts
}

/** All frames of the row, hanging by their lugs on the ledges of the long walls. */
export const buildFrames = (design: Design, d: HiveDimensions): readonly Part[] => {
  const { frame, cavity } = design
  const lugged = { thickness: frame.topBarThicknessMm, width: frame.topBarWidthMm, hasLugs: true }
  const bottom = cavity.belowSpaceMm
  const single: Half = {
    id: '',
    words: '',
    bottom,
    top: d.frameTop,
    topBar: lugged,
    pegged: 'none',
  }
  const joint = d.frameTop - frame.depthMm
  const upper: Half = {
    ...single,
    id: 'upper-',
    words: ', upper half',
    bottom: joint,
    pegged: 'bottom-bar',
  }
  const lower: Half = {
    id: 'lower-',
    words: ', lower half',
    bottom,
    top: joint,
    topBar: { thickness: frame.middleBarThicknessMm, width: frame.sideBarWidthMm, hasLugs: false },
    pegged: 'top-bar',
  }
  const ledges = ['front-wall/lining', 'back-wall/lining']
  const [first, ...others] = d.frameCentres
  if (first === undefined) return []
  const model =
    frame.form === 'single'
      ? buildHalf(design, single, first, ledges)
      : [
          ...buildHalf(design, upper, first, ledges),
          ...buildHalf(design, lower, first, [`${FIRST}upper-bottom-bar`]),
        ]
  return [
    ...model,
    ...others.flatMap((x, i) => model.map((part) => copyPart(part, x - first, i + 1))),
  ]
}

/** What the ids of the first frame's parts begin with. */
const FIRST = 'frame-1/'

/** A part of the first frame as a part of another one. */
const copyPart = (part: Part, dx: number, index: number): Part => {
  const rename = (id: string): string =>
    id.startsWith(FIRST) ? `frame-${index + 1}/${id.slice(FIRST.length)}` : id
  return {
    ...part,
    id: rename(part.id),
    index,
    solids: part.solids.map((solid) => moveSolid(solid, { x: dx, y: 0, z: 0 })),
    fixedTo: part.fixedTo.map(rename),
    copyOf: part.id,
  }
}
