import { type Box, box } from '../../src/geometry/box.ts'
import { boxSolid, type Solid } from '../../src/geometry/solid.ts'
import { vec3 } from '../../src/geometry/vector.ts'
import type { Hive } from '../../src/hive/hive.ts'
import type { Part } from '../../src/hive/part.ts'

/** A part with the least that a view needs; an invented shape, not a real hive's. */
export const samplePart = (
  id: string,
  solids: Box | readonly Solid[],
  change: Partial<Part> = {},
) => {
  const part: Part = {
    id,
    name: id,
    group: 'front-wall',
    motion: 'fixed',
    material: 'spruce',
    size: { length: 100, width: 100, thickness: 20 },
    grain: 'x',
    solids: 'x0' in solids ? [boxSolid(solids)] : solids,
    operations: [],
    fixedTo: [],
    explode: { direction: vec3(0, 0, 1), layer: 0 },
    step: 1,
    bought: false,
    ...change,
  }
  return part
}

/** A hive 1000 long, 600 wide and 500 high outside, with two frames of 400 under five covers of 200. */
export const sampleHive = (parts: readonly Part[]): Hive => ({
  parts,
  row: [],
  dimensions: {
    cavityLength: 1000,
    cavityWidth: 460,
    cavityHeight: 420,
    frameDepth: 400,
    frameTop: 410,
    restHeight: 400,
    coverLedgeHeight: 420,
    wallTop: 440,
    restDepth: 20,
    seatWidth: 12,
    lugBearing: 10,
    lugEndClearance: 2,
    liningThickness: 10,
    coreThickness: 40,
    claddingThickness: 20,
    wallThickness: 70,
    outerLength: 1140,
    outerWidth: 600,
    outerHeight: 500,
    floorThickness: 50,
    lidThickness: 60,
    lidTop: 500,
    roofTop: 500,
    roofLength: 1140,
    roofWidth: 600,
    bearerHeight: 60,
    groundHeight: -400,
    frameCentres: [300, 500],
  },
  hinges: [
    { motion: 'lid', point: vec3(0, 440, -300), sense: -1, openDeg: 90 },
    { motion: 'floor', point: vec3(0, 0, -300), sense: 1, openDeg: 30 },
  ],
  openings: [],
  panels: [],
  roof: undefined,
  cavities: [],
  sundries: [],
})

export const frontLining = samplePart('front-wall/lining', box([0, 1000], [0, 420], [230, 240]))
export const frontCladding = samplePart(
  'front-wall/cladding',
  box([0, 1000], [0, 420], [280, 300]),
  { explode: { direction: vec3(0, 0, 1), layer: 3 } },
)
export const lidPanel = samplePart('lid/lining', box([0, 1000], [440, 500], [-300, 300]), {
  group: 'lid',
  motion: 'lid',
  explode: { direction: vec3(0, 1, 0), layer: 0 },
})
export const lidRim = samplePart('lid/rim-front', box([0, 1000], [400, 500], [300, 320]), {
  group: 'lid',
  motion: 'lid',
  explode: { direction: vec3(0, 0, 1), layer: 1 },
})
export const floorPanel = samplePart('floor/lining', box([0, 1000], [-50, 0], [-300, 300]), {
  group: 'floor',
  motion: 'floor',
  explode: { direction: vec3(0, -1, 0), layer: 0 },
})
export const sampleFrames = [300, 500].map((x, index) =>
  samplePart(`frame-${index + 1}/top-bar`, box([x - 15, x + 15], [10, 410], [-220, 220]), {
    group: 'frames',
    motion: 'frame',
    index,
    explode: { direction: vec3(0, 1, 0), layer: 0 },
  }),
)
export const sampleCovers = [0, 1, 2, 3, 4].map((index) =>
  samplePart(
    `covers/board-${index + 1}`,
    box([200 * index, 200 * (index + 1)], [420, 432], [-230, 230]),
    {
      group: 'covers',
      motion: 'cover',
      index,
      explode: { direction: vec3(0, 1, 0), layer: 0 },
    },
  ),
)
export const wholeSample = sampleHive([
  frontLining,
  frontCladding,
  lidPanel,
  lidRim,
  floorPanel,
  ...sampleFrames,
  ...sampleCovers,
])
