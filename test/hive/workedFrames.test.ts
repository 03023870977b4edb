import { describe, expect, it } from 'vitest'
import { frameStandardById } from '../../src/catalog/frameStandards.ts'
import { DEFAULT_DESIGN, DEFAULT_ENTRANCE } from '../../src/design/defaults.ts'
import type { Design } from '../../src/design/schema.ts'
import { buildHive, near, partOf, placeOf, withFields } from './placeOf.ts'

type Standard = Design['frame']['standard']

/** The default design with single frames of another standard. */
const withStandard = (standard: Standard): Design => {
  const { dimensions, spacingMm } = frameStandardById(standard)
  const frame = {
    ...DEFAULT_DESIGN.frame,
    ...dimensions,
    standard,
    spacingMm,
    form: 'single',
  } as const
  return { ...DEFAULT_DESIGN, frame }
}

/**
 * Two colonies on British National frames: top bar 432, lugs 9.5, body 356, depth 216, spacing 35. End
 * walls run through, a cloth lies under the covers, the lid is flat, the hive stands on its bearers.
 */
describe('a hive for two colonies on National frames', () => {
  const hive = buildHive({
    ...withFields(withStandard('british-national'), {
      'cavity.frames': 12,
      // Inside width 371.5, the National's 15.5 beside the frame (British Standard figures as quoted in
      // the frame table): 7.75 on each side; 9 below the frame.
      'cavity.endBarSpaceMm': 7.75,
      'cavity.belowSpaceMm': 9,
      'cavity.aboveSpaceMm': 8,
      'cavity.rowEndSpaceMm': 3,
      'cavity.playMm': 10,
      'cavity.closure': 'cloth',
      'cavity.coverThicknessMm': 9,
      'cavity.coverSegments': 4,
      'cavity.coverLedgeMm': 12,
      'cavity.followers': 'none',
      'cavity.divider': 'fitted',
      'cavity.dividerAfterFrame': 6,
      'cavity.dividerThicknessMm': 12,
      'walls.corner': 'end-through',
      'walls.liningMm': 10,
      'walls.coreMm': 60,
      'walls.claddingMm': 20,
      'walls.claddingForm': 'sheet',
      'lid.form': 'flat',
      'lid.coreMm': 80,
      'lid.claddingMm': 9,
      'lid.coverMm': 1,
      'lid.overhangMm': 30,
      'stand.form': 'none',
    }),
    openings: {
      entrances: [
        { ...DEFAULT_ENTRANCE, centreMm: 100, widthMm: 120 },
        { ...DEFAULT_ENTRANCE, centreMm: 364, widthMm: 120 },
      ],
      vents: [],
      landingBoards: false,
      landingDepthMm: 70,
    },
  })
  const places = (expected: Readonly<Record<string, readonly number[]>>) => {
    for (const [id, place] of Object.entries(expected)) {
      expect({ id, place: placeOf(hive, id) }).toEqual({ id, place: near(place) })
    }
  }

  it('has these leading dimensions', () => {
    expect(hive.dimensions).toMatchObject({
      // 12 × 35 + 12 + 2 × 3 × (1 + 1 board) + 10 × 2 colonies
      cavityLength: 464,
      // 356 + 2 × 7.75
      cavityWidth: 371.5,
      frameDepth: 216,
      // 9 + 216
      frameTop: 225,
      // 225 - 9.5
      restHeight: 215.5,
      // 225 + 8
      cavityHeight: 233,
      coverLedgeHeight: 233,
      // 233 + cloth 1 + boards 9
      wallTop: 243,
      // 9.5 + 8
      restDepth: 17.5,
      // (432 - 371.5) / 2
      lugBearing: 30.25,
      // 30.25 + 2 is more than the lining
      seatWidth: 32.25,
      lugEndClearance: 2,
      // 10 + 60 + 20
      wallThickness: 90,
      // 464 + 180
      outerLength: 644,
      // 371.5 + 180
      outerWidth: 551.5,
      // 6 + 80 + 9
      lidThickness: 95,
      // 243 + 95
      lidTop: 338,
      // 338 + 1
      roofTop: 339,
      // 644 + 2 × (2.5 + 19 + 30)
      roofLength: 747,
      // 551.5 + 103
      roofWidth: 654.5,
      // 55 + 8; without a stand the bearers are on the ground
      bearerHeight: 63,
      groundHeight: -63,
      // 339 + 63
      outerHeight: 402,
    })
  })

  it('has this row, with the play of each colony at its outer end', () => {
    const ends = hive.row.map(({ kind, x0, x1 }) => [kind, x0, x1])
    expect(ends.slice(0, 3)).toEqual([
      ['play', 0, 10],
      ['space', 10, 13],
      ['frame', 13, 48],
    ])
    // 13 + 6 × 35 = 223
    expect(ends.slice(7, 12)).toEqual([
      ['frame', 188, 223],
      ['space', 223, 226],
      ['divider', 226, 238],
      ['space', 238, 241],
      ['frame', 241, 276],
    ])
    // 241 + 6 × 35 = 451
    expect(ends.slice(16)).toEqual([
      ['frame', 416, 451],
      ['space', 451, 454],
      ['play', 454, 464],
    ])
    expect(hive.cavities).toEqual([
      { colony: 1, box: { x0: 0, x1: 226, y0: 0, y1: 233, z0: -185.75, z1: 185.75 } },
      { colony: 2, box: { x0: 238, x1: 464, y0: 0, y1: 233, z0: -185.75, z1: 185.75 } },
    ])
    // 100 ± 60 and 364 ± 60 on either side of the divider.
    expect(hive.openings.map(({ colony, tunnel }) => [colony, tunnel.x0, tunnel.x1])).toEqual([
      [1, 40, 160],
      [2, 304, 424],
    ])
  })

  it('has this divider, with ears over the ledges', () => {
    // 1 mm off walls and floor: 185.75 - 1; ears to 185.75 + 32.25 - 1 = 217, from the rest to the cloth.
    expect(partOf(hive, 'divider/sheet').solids).toEqual([
      { kind: 'box', box: { x0: 226, x1: 238, y0: 1, y1: 233, z0: -184.75, z1: 184.75 } },
      { kind: 'box', box: { x0: 226, x1: 238, y0: 215.5, y1: 233, z0: 184.75, z1: 217 } },
      { kind: 'box', box: { x0: 226, x1: 238, y0: 215.5, y1: 233, z0: -217, z1: -184.75 } },
    ])
  })

  it('has these walls, end walls running through', () => {
    places({
      'front-wall/lining': [0, 464, 0, 215.5, 185.75, 195.75],
      'front-wall/rail-low': [0, 464, 0, 28, 195.75, 255.75],
      // Cladding of the long walls laps over the end walls: 90 past the cavity.
      'front-wall/cladding': [-90, 554, 0, 243, 255.75, 275.75],
      // 185.75 + 10 + 60 = 255.75 to both sides.
      'left-wall/lining': [-10, 0, 0, 215.5, -255.75, 255.75],
      'left-wall/cladding': [-90, -70, 0, 243, -255.75, 255.75],
      // The rest strip stands behind the seat: 185.75 + 32.25 = 218.
      'ring/rest-front-wall': [-70, 534, 215.5, 233, 218, 255.75],
      'ring/cover-front-wall': [-70, 534, 233, 243, 230, 255.75],
    })
  })

  it('has a cloth and two cover boards for each colony, parted over the divider', () => {
    // Reach 12 - 1 = 11; middle of the divider 232, 1 mm between: -11 to 231.5 and 232.5 to 475.
    // Each side 242.5 long: two boards of (242.5 - 1) / 2 = 120.75. Width 185.75 + 32.25 + 11 = 229.
    places({
      'covers/cloth-1': [-11, 231.5, 233, 234, -229, 229],
      'covers/cloth-2': [232.5, 475, 233, 234, -229, 229],
      'covers/board-1': [-11, 109.75, 234, 243, -229, 229],
      'covers/board-2': [110.75, 231.5, 234, 243, -229, 229],
      'covers/board-3': [232.5, 353.25, 234, 243, -229, 229],
    })
  })

  it('has a flat lid whose top skin overhangs', () => {
    places({
      // 90 + 2.5 + 19 + 30 = 141.5 past the cavity.
      'lid/cladding': [-141.5, 605.5, 329, 338, -327.25, 327.25],
      'roof/cover-sheet': [-141.5, 605.5, 338, 339, -327.25, 327.25],
      'lid/lining': [-92.5, 556.5, 243, 249, -278.25, 278.25],
      'stand/bearer-right': [464 + 12, 554, -63, 0, -275.75, 275.75],
    })
    expect(hive.parts.some(({ name }) => name === 'Firring')).toBe(false)
  })
})

/**
 * Layens as Bertrand gives it (La conduite du rucher, p. 289-292): inside height 433, rest 18, lug 10,
 * uprights 405 under a top bar of 10, feet of 5, bottom bar 20; inside 345 × 767 for 20 frames, rebates
 * of 12.5. The catalogue counts the stiffener with the top bar (20) and the feet with the bottom bar (25).
 */
describe('a Layens hive with top bars that touch', () => {
  const design = withFields(withStandard('layens'), {
    'frame.topBarWidthMm': 38,
    'cavity.frames': 20,
    'cavity.followers': 'none',
    'cavity.endBarSpaceMm': 7.5,
    'cavity.belowSpaceMm': 10,
    'cavity.aboveSpaceMm': 8,
    'cavity.rowEndSpaceMm': 0,
    'cavity.playMm': 0,
    'cavity.lugClearanceMm': 1,
    'cavity.closure': 'touching',
    'walls.liningMm': 12.5,
    'walls.coreMm': 50,
    'walls.claddingMm': 20,
    'lid.form': 'flat',
    'lid.coreMm': 60,
    'lid.claddingMm': 9,
    'stand.form': 'trestle',
    'stand.legWidthMm': 50,
    'stand.workingHeightMm': 800,
  })
  const hive = buildHive(design)
  const d = hive.dimensions

  it('has the vertical stack of the handbook', () => {
    // 405 + 10
    expect(d.frameDepth).toBe(415)
    expect(d.cavityHeight).toBe(433)
    // Rest 18 deep = lug 10 + top space 8.
    expect(d.restDepth).toBe(18)
    expect(d.restHeight).toBe(433 - 18)
    expect(d.coverLedgeHeight - d.frameTop).toBe(8)
    // Feet to floor 10; the bottom bar proper is 5 higher, 15.
    const [, , bottom] = placeOf(hive, 'frame-1/bottom-bar')
    expect(bottom).toBe(10)
    // Comb between stiffener and bottom bar: 405 - 10 - 20 - 5 = 370.
    const [, , from, to] = placeOf(hive, 'frame-1/foundation')
    expect(Number(to) - Number(from)).toBe(370)
  })

  it('has the widths of the handbook', () => {
    // 345 - 330 = 15: 7.5 on each side.
    expect(d.cavityWidth).toBe(345)
    expect(placeOf(hive, 'front-wall/lining')[4]).toBe(330 / 2 + 7.5)
    // Rebates of 12.5: 345 + 2 × 12.5 - 368 = 2 in all, 1 at each end.
    expect(d.seatWidth).toBe(12.5)
    expect(2 * d.lugEndClearance).toBe(2)
  })

  it('has twenty frames in 767 mm', () => {
    // 767 / 20 = 38.35
    expect(d.cavityLength).toBeCloseTo(767, 6)
    expect(d.frameCentres[0]).toBeCloseTo(19.175, 6)
    expect(d.frameCentres[19]).toBeCloseTo(767 - 19.175, 6)
  })

  it('has the other leading dimensions by these sums', () => {
    expect(d.frameTop).toBe(10 + 415)
    // Nothing lies on the top bars: the walls end 8 above them.
    expect(d.wallTop).toBe(433)
    // (368 - 345) / 2
    expect(d.lugBearing).toBe(11.5)
    // 12.5 + 50 + 20
    expect(d.wallThickness).toBe(82.5)
    // 767 + 165; 345 + 165
    expect([d.outerLength, d.outerWidth]).toEqual(near([932, 510]))
    // 433 + 6 + 60 + 9, and 0.7 of sheet
    expect([d.lidTop, d.roofTop]).toEqual(near([508, 508.7]))
    // 932 + 2 × (2.5 + 19 + 40); 510 + 123
    expect([d.roofLength, d.roofWidth]).toEqual(near([1055, 633]))
    // 508.7 + 63
    expect(d.outerHeight).toBeCloseTo(571.7, 6)
    // 425 - 800
    expect(d.groundHeight).toBe(-375)
  })

  it('has no cover boards and needs no closing strips', () => {
    // Between bars 38.35 - 38 = 0.35, at the ends half of it.
    expect(hive.parts.filter(({ group }) => group === 'covers')).toEqual([])
    expect(hive.parts.filter(({ id }) => id.startsWith('ring/cover'))).toEqual([])
  })

  it('closes a wide gap in the row with a strip from bar to wall', () => {
    const withPlay = buildHive(withFields(design, { 'cavity.playMm': 15 }))
    // The last bar ends at 767 - 19.175 + 19 = 766.825; the wall is at 782.
    expect(placeOf(withPlay, 'covers/closer-1')).toEqual(near([766.825, 782, 415, 425, -184, 184]))
  })

  it('stands on splayed trestles', () => {
    // Legs from the bearer's underside at -63 to -375, 312 high, 0.2 outwards: 62.4. Outside at the top
    // 510 / 2 = 255.
    expect(placeOf(hive, 'stand/leg-left-front')).toEqual(
      near([-82.5, -32.5, -375, -63, 205, 255 + 62.4]),
    )
    // Sawn from 50 / 1.0198039 = 49.029 with slanting ends: 312 × 1.0198039 + 49.029 × 0.2 = 327.9846.
    expect(partOf(hive, 'stand/leg-left-front').size).toEqual({
      length: expect.closeTo(327.9846, 3),
      width: 50,
      thickness: expect.closeTo(49.029, 3),
    })
    // Tie at -375 + 0.3 × 312 = -281.4, 60 high; below, the legs are 205 + 0.2 × 218.4 = 248.68 off.
    expect(placeOf(hive, 'stand/tie-left')).toEqual(
      near([-76.5, -38.5, -281.4, -221.4, -248.68, 248.68]),
    )
  })
})

/**
 * Langstroth by its inches (trade sizes: 18 3/8 inside, 17 5/8 frame, 19 top bar, 3/8 lug and ledge,
 * 5/8 rebate, 9 1/8 frame in a 9 5/8 box).
 */
describe('a Langstroth hive by its inches', () => {
  const inch = 25.4
  const hive = buildHive(
    withFields(withStandard('langstroth-deep'), {
      'frame.topBarLengthMm': 19 * inch,
      'frame.bodyLengthMm': 17.625 * inch,
      'frame.depthMm': 9.125 * inch,
      'frame.lugThicknessMm': 0.375 * inch,
      // (18 3/8 - 17 5/8) / 2 = 3/8
      'cavity.endBarSpaceMm': 0.375 * inch,
      // 5/8 - 3/8
      'cavity.aboveSpaceMm': 0.25 * inch,
      // 9 5/8 - 1/4 - 9 1/8
      'cavity.belowSpaceMm': 0.25 * inch,
      // Lug on the ledge: (19 - 18 3/8) / 2 = 5/16; 3/8 - 5/16 = 1/16.
      'cavity.lugClearanceMm': 0.0625 * inch,
      'walls.liningMm': 0.375 * inch,
    }),
  )
  const d = hive.dimensions

  it('leaves 9.53 mm beside the frame, 1.6 mm at the lug and 6.4 mm above', () => {
    // 466.7 inside
    expect(d.cavityWidth).toBeCloseTo(466.725, 3)
    // 466.7 - 447.7 = 19.05 in all
    expect((d.cavityWidth - 447.675) / 2).toBeCloseTo(9.525, 3)
    expect(d.lugBearing).toBeCloseTo(7.9375, 4)
    expect(d.lugEndClearance).toBeCloseTo(1.5875, 4)
    // Rest 15.9 - lug 9.5 = 6.4
    expect(d.restDepth).toBeCloseTo(15.875, 3)
    expect(d.coverLedgeHeight - d.frameTop).toBeCloseTo(6.35, 3)
  })

  it('is as high inside as a 9 5/8 box, with 12.7 mm shared out above and below', () => {
    expect(d.cavityHeight).toBeCloseTo(9.625 * inch, 6)
    expect(d.cavityHeight - d.frameDepth).toBeCloseTo(12.7, 6)
  })
})
