import type { Design } from '../design/schema.ts'
import { box } from '../geometry/box.ts'
import type { HiveDimensions } from './dimensions.ts'
import { BACKWARD, FORWARD, LEFT, RIGHT } from './directions.ts'
import { makePart } from './makePart.ts'
import { hasCovers } from './measure.ts'
import type { Part } from './part.ts'
import { STEP } from './steps.ts'

/**
 * Four strips lying flat on the walls: long ones over the long walls from end to end, short ones
 * between them. `inside` is how far the long strips stand back from the lining's face, `endInside`
 * the same for the short ones.
 */
const buildRing = (
  design: Design,
  d: HiveDimensions,
  ring: {
    readonly id: string
    readonly words: string
    readonly bottom: number
    readonly top: number
    readonly inside: number
    readonly endInside: number
    readonly on: (wall: string) => string
    readonly layer: number
  },
): readonly Part[] => {
  const past = d.liningThickness + d.coreThickness
  const half = d.cavityWidth / 2
  const ys = [ring.bottom, ring.top] as const
  const strip = (wall: string, direction: typeof FORWARD, place: ReturnType<typeof box>) =>
    makePart({
      id: `ring/${ring.id}-${wall}`,
      name:
        wall === 'front-wall' || wall === 'back-wall'
          ? `${ring.words}, long`
          : `${ring.words}, end`,
      group: 'rim',
      motion: 'fixed',
      material: design.walls.railMaterial,
      grain: wall === 'front-wall' || wall === 'back-wall' ? 'x' : 'z',
      solids: place,
      fixedTo: [ring.on(wall)],
      explode: { direction, layer: ring.layer },
      step: STEP.ring,
    })
  const xs = [-past, d.cavityLength + past] as const
  const between = half + ring.inside
  return [
    strip('front-wall', FORWARD, box(xs, ys, [between, half + past])),
    strip('back-wall', BACKWARD, box(xs, ys, [-half - past, -between])),
    strip('left-wall', LEFT, box([-past, -ring.endInside], ys, [-between, between])),
    strip(
      'right-wall',
      RIGHT,
      box([d.cavityLength + ring.endInside, d.cavityLength + past], ys, [-between, between]),
    ),
  ]
}

/**
 * The strips that make the ledges: the rest ring stands back from the lining to leave the rebate that
 * the lugs hang in; the cover ring stands back further and leaves the ledge for the cover boards.
 */
export const buildRings = (design: Design, d: HiveDimensions): readonly Part[] => {
  const rest = buildRing(design, d, {
    id: 'rest',
    words: 'Rest strip',
    bottom: d.restHeight,
    top: d.coverLedgeHeight,
    inside: d.seatWidth,
    endInside: 0,
    on: (wall) => `${wall}/rail-high`,
    layer: 0,
  })
  if (!hasCovers(design)) return rest
  const ledge = design.cavity.coverLedgeMm
  return [
    ...rest,
    ...buildRing(design, d, {
      id: 'cover',
      words: 'Cover strip',
      bottom: d.coverLedgeHeight,
      top: d.wallTop,
      inside: d.seatWidth + ledge,
      endInside: ledge,
      on: (wall) => `ring/rest-${wall}`,
      layer: 1,
    }),
  ]
}
