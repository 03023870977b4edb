import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { buildHive, near, partOf, placeOf } from './placeOf.ts'

/**
 * The default design, worked out with pencil and paper. Frame: Langstroth deep, split: 483 top bar of
 * 27 × 19 with lugs of 9.5; body 448; halves 232 deep; side bars 9.5 × 28 with shoulders of 35; bottom
 * bars 9.5 × 19; middle bar 9.5. Row: 20 frames at 35, a follower of 32 after frame 12, end space 4,
 * play 15. Walls 12 + 60 + 19, floor 9 + 40 + 6, lid 6 + 100 + 6.
 */
describe('the default hive', () => {
  const hive = buildHive(DEFAULT_DESIGN)
  const places = (expected: Readonly<Record<string, readonly number[]>>) => {
    for (const [id, place] of Object.entries(expected)) {
      expect({ id, place: placeOf(hive, id) }).toEqual({ id, place: near(place) })
    }
  }

  it('has these leading dimensions', () => {
    expect(hive.dimensions).toMatchObject({
      // 20 × 35 + 32 + 2 × 4 × (1 + 1 board) + 15
      cavityLength: 763,
      // 448 + 2 × 8
      cavityWidth: 464,
      // 2 × 232
      frameDepth: 464,
      // 13 + 464
      frameTop: 477,
      // 477 - 9.5
      restHeight: 467.5,
      // 477 + 7; the cover boards lie here, and the cavity is as high
      coverLedgeHeight: 484,
      cavityHeight: 484,
      // 484 + 12
      wallTop: 496,
      // 9.5 + 7
      restDepth: 16.5,
      // (483 - 464) / 2
      lugBearing: 9.5,
      // the lining, 12, is more than 9.5 + 2
      seatWidth: 12,
      // 12 - 9.5
      lugEndClearance: 2.5,
      // 12 + 60 + 19
      wallThickness: 91,
      // 763 + 2 × 91
      outerLength: 945,
      // 464 + 2 × 91
      outerWidth: 646,
      // 9 + 40 + 6
      floorThickness: 55,
      // 55 + 8
      bearerHeight: 63,
      // 6 + 100 + 6
      lidThickness: 112,
      // 496 + 112
      lidTop: 608,
      // 945 + 2 × (2.5 + 19 + 40)
      roofLength: 1068,
      // 646 + 2 × (2.5 + 19 + 40)
      roofWidth: 769,
      // 477 - 850
      groundHeight: -373,
    })
    // The deck rises over 646 + 2 × 21.5 + 40 = 729 from the low rim to the high eave; tan 4° = 0.0699268,
    // cos 4° = 0.9975641: 608 + 10 + 729 × 0.0699268 + (9 + 0.7) / 0.9975641 = 618 + 50.9766 + 9.7237.
    expect(hive.dimensions.roofTop).toBeCloseTo(678.7003, 3)
    // 678.7003 + 63
    expect(hive.dimensions.outerHeight).toBeCloseTo(741.7003, 3)
  })

  it('has this row', () => {
    const ends = hive.row.map(({ kind, x0, x1 }) => [kind, x0, x1])
    expect(ends).toHaveLength(1 + 12 + 3 + 8 + 2)
    expect(ends.slice(0, 2)).toEqual([
      ['space', 0, 4],
      ['frame', 4, 39],
    ])
    // 4 + 12 × 35 = 424
    expect(ends.slice(12, 17)).toEqual([
      ['frame', 389, 424],
      ['space', 424, 428],
      ['follower', 428, 460],
      ['space', 460, 464],
      ['frame', 464, 499],
    ])
    // 464 + 8 × 35 = 744
    expect(ends.slice(23)).toEqual([
      ['frame', 709, 744],
      ['space', 744, 748],
      ['play', 748, 763],
    ])
    // 4 + 17.5; 4 + 11.5 × 35; 464 + 17.5; 464 + 7.5 × 35
    const { frameCentres } = hive.dimensions
    expect([0, 11, 12, 19].map((i) => frameCentres[i])).toEqual([21.5, 406.5, 481.5, 726.5])
  })

  it('has these walls', () => {
    places({
      // Runs through: 12 + 60 = 72 past both ends; from the floor to the rest; z 232 to 232 + 12.
      'front-wall/lining': [-72, 763 + 72, 0, 467.5, 232, 244],
      'front-wall/rail-low': [-72, 835, 0, 28, 244, 304],
      'front-wall/rail-high': [-72, 835, 467.5 - 28, 467.5, 244, 304],
      // 907 long less a stud of 28 is 879, two bays of 439.5; between the rails 467.5 - 56 = 411.5.
      'front-wall/stud-1': [-72, -44, 28, 439.5, 244, 304],
      'front-wall/stud-2': [-72 + 439.5, 395.5, 28, 439.5, 244, 304],
      'front-wall/stud-3': [835 - 28, 835, 28, 439.5, 244, 304],
      // 496 high in boards of at most 145: 4 of 124. It ends with the core.
      'front-wall/cladding-1': [-72, 835, 0, 124, 304, 323],
      'front-wall/cladding-4': [-72, 835, 372, 496, 304, 323],
      // The end wall stands between the long walls; its cladding laps over their ends: 232 + 91.
      'left-wall/lining': [-12, 0, 0, 467.5, -232, 232],
      'left-wall/rail-high': [-72, -12, 439.5, 467.5, -232, 232],
      'left-wall/cladding-2': [-91, -72, 124, 248, -323, 323],
      // Between the end wall's studs, 464 long, span 436, one bay: pocket 464 - 56 = 408, 1 mm smaller.
      'left-wall/insulation-1': [-72, -12, 28.5, 439, -203.5, 203.5],
    })
  })

  it('has these rings on the walls', () => {
    places({
      // Behind the seat of 12, out to the core's face at 232 + 72.
      'ring/rest-front-wall': [-72, 835, 467.5, 484, 244, 304],
      'ring/rest-left-wall': [-72, 0, 467.5, 484, -244, 244],
      // Behind the covers' ledge of 15 more.
      'ring/cover-front-wall': [-72, 835, 484, 496, 259, 304],
      'ring/cover-left-wall': [-72, -15, 484, 496, -259, 259],
    })
  })

  it('has these frames', () => {
    places({
      // Middle at 21.5, 27 wide; the bar from 477 - 19 = 458, lugs out to 483 / 2 = 241.5.
      'frame-1/upper-top-bar': [8, 35, 458, 477, -241.5, 241.5],
      // Upper half from 477 - 232 = 245; shoulder 35 wide; z 224 - 9.5 = 214.5.
      'frame-1/upper-side-bar-front': [4, 39, 245, 458, 214.5, 224],
      'frame-1/upper-bottom-bar': [12, 31, 245, 254.5, -214.5, 214.5],
      'frame-1/upper-foundation': [21, 22, 254.5, 458, -214.5, 214.5],
      // The middle bar is as wide as the side bar, 28, and has no lugs.
      'frame-1/lower-top-bar': [7.5, 35.5, 235.5, 245, -224, 224],
      'frame-1/lower-side-bar-back': [4, 39, 13, 235.5, -224, -214.5],
      'frame-1/lower-bottom-bar': [12, 31, 13, 22.5, -214.5, 214.5],
    })
    expect(partOf(hive, 'frame-1/upper-top-bar').solids).toHaveLength(3)
    // The lug: 467.5 to 477, from the side bar's outside at 224 to the end.
    expect(partOf(hive, 'frame-1/upper-top-bar').solids[1]).toMatchObject({
      box: { y0: 467.5, y1: 477, z0: 224, z1: 241.5 },
    })
    // The shoulder is the upper third of 458 - 245 = 213: 71.
    expect(partOf(hive, 'frame-1/upper-side-bar-front').solids[1]).toMatchObject({
      box: { x0: 4, x1: 39, y0: 387, y1: 458 },
    })
  })

  it('has this follower', () => {
    places({
      'follower-1/top-bar': [428, 460, 467.5, 477, -241.5, 241.5],
      // 11 over the floor, 7 from the walls: 232 - 7 = 225.
      'follower-1/skin-left': [428, 434, 11, 467.5, -225, 225],
      'follower-1/strip-bottom': [434, 454, 11, 31, -225, 225],
      'follower-1/strip-front': [434, 454, 31, 447.5, 205, 225],
      // 1 mm smaller than its pocket.
      'follower-1/insulation': [434, 454, 31.5, 447, -204.5, 204.5],
    })
  })

  it('has these cover boards', () => {
    // Each edge 1 mm off the ring: x from -14 to 777, z 232 + 12 + 14 = 258; 5 boards with 4 gaps of 1:
    // (791 - 4) / 5 = 157.4.
    places({
      'covers/board-1': [-14, 143.4, 484, 496, -258, 258],
      'covers/board-2': [144.4, 301.8, 484, 496, -258, 258],
      'covers/board-5': [619.6, 777, 484, 496, -258, 258],
    })
  })

  it('has this floor', () => {
    places({
      // Laps under the end walls' linings and under the whole long walls.
      'floor/lining': [-12, 775, -9, 0, -323, 323],
      'floor/rail-low': [-12, 775, -49, -9, -323, -285],
      // 787 less 38 is 749: two bays of 374.5.
      'floor/stud-2': [362.5, 400.5, -49, -9, -285, 285],
      'floor/cladding': [-12, 775, -55, -49, -323, 323],
    })
    expect(hive.hinges.find((h) => h.motion === 'floor')).toEqual({
      motion: 'floor',
      point: { x: 0, y: 0, z: -323 },
      sense: 1,
      openDeg: 30,
    })
  })

  it('has this lid with its rim and roof', () => {
    places({
      // 91 + 2.5 = 93.5 past the cavity: 950 × 651.
      'lid/lining': [-93.5, 856.5, 496, 502, -325.5, 325.5],
      'lid/rail-low': [-93.5, 856.5, 502, 602, -325.5, -297.5],
      // The top skin covers the rim of 19: 988 × 689.
      'lid/cladding': [-112.5, 875.5, 602, 608, -344.5, 344.5],
      // From 496 - 30 to the top skin.
      'lid/rim-front': [-112.5, 875.5, 466, 602, 325.5, 344.5],
      'lid/rim-left': [-112.5, -93.5, 466, 602, -325.5, 325.5],
      // 1 below the rim, 45 high, flush with it.
      'rim/hinge-rail': [-91, 854, 420, 465, -344.5, -323],
      // 988 less 28 is 960: two bays of 480. Between closing boards of 18; the low end is at the back:
      // 10 + 18 × 0.0699268 = 11.2587; the high one 10 + (689 - 18) × 0.0699268 = 56.9209.
      'roof/firring-2': [367.5, 395.5, 608, 664.9209, -326.5, 326.5],
    })
    expect(partOf(hive, 'roof/firring-2').operations).toEqual([
      { kind: 'taper', from: expect.closeTo(11.2587, 3), to: expect.closeTo(56.9209, 3) },
    ])
    // The deck: 769 wide in plan, 769 / 0.9975641 = 770.8778 along the slope.
    expect(partOf(hive, 'roof/deck').size).toEqual({
      length: 1068,
      width: expect.closeTo(770.8778, 3),
      thickness: 9,
    })
    expect(hive.hinges.find((h) => h.motion === 'lid')).toEqual({
      motion: 'lid',
      // In the middle of the 1 mm gap under the rim.
      point: { x: 0, y: 465.5, z: -344.5 },
      sense: -1,
      openDeg: 100,
    })
  })

  it('has this entrance', () => {
    expect(hive.openings).toEqual([
      {
        kind: 'entrance',
        index: 0,
        wall: 'front',
        // 150 ± 90; 15 to 15 + 8; from the lining's face right through 91.
        tunnel: { x0: 60, x1: 240, y0: 15, y1: 23, z0: 232, z1: 323 },
        holes: 1,
        area: 180 * 8,
        colony: 1,
      },
    ])
    places({
      // 20 past both ends; 12 above the hole would be 35, which leaves 7 over the rail: made 12.
      'front-wall/block-1': [40, 260, 28, 40, 244, 304],
      // 30 past both ends, 70 deep, falling by 7; 12 thick.
      'openings/landing-1': [30, 270, 15 - 7 - 12, 15, 323, 393],
    })
  })

  it('stands on these bearers, legs and braces', () => {
    places({
      // From the outside to 2 mm clear of the floor: 12 + 2 from the cavity.
      'stand/bearer-left': [-91, -14, -63, 0, -323, 323],
      'stand/leg-left-back': [-91, -31, -373, -63, -323, -263],
      // At 0.3 of the leg's 310: -373 + 93 = -280; 38 thick in the middle of the leg's 60.
      'stand/brace-left': [-80, -42, -280, -220, -263, 263],
      // On the floor's hinge side, between the legs: -31 to 763 + 91 - 60.
      'stand/brace-long': [-31, 794, -280, -220, -312, -274],
    })
  })
})
