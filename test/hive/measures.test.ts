import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Design } from '../../src/design/schema.ts'
import type { Hive } from '../../src/hive/hive.ts'
import { arbitraryMixedBuilt, runs } from './arbitraryBuilt.ts'

const hives = arbitraryMixedBuilt()

/** Places of the row's boards and their thickness, counted afresh from the document. */
const boardsOf = ({ cavity }: Design) => {
  const count = { none: 0, one: 1, two: 2 }[cavity.followers]
  const dividers = cavity.divider === 'fitted' ? 1 : 0
  return {
    boards: count + dividers,
    thickness: count * cavity.followerThicknessMm + dividers * cavity.dividerThicknessMm,
    colonies: 1 + dividers,
  }
}

/** Leading dimensions as the design page and the docstrings define them, written out once more. */
const expectedDimensions = (design: Design) => {
  const { frame, cavity, walls, floor, lid } = design
  const { boards, thickness, colonies } = boardsOf(design)
  const length =
    cavity.frames * frame.spacingMm +
    thickness +
    (1 + boards) * 2 * cavity.rowEndSpaceMm +
    colonies * cavity.playMm
  const width = cavity.endBarSpaceMm + frame.bodyLengthMm + cavity.endBarSpaceMm
  const depth = frame.form === 'split' ? frame.depthMm + frame.depthMm : frame.depthMm
  const covers = {
    covers: cavity.coverThicknessMm,
    cloth: cavity.coverThicknessMm + 1,
    touching: 0,
  }[cavity.closure]
  const ledge = cavity.belowSpaceMm + depth + cavity.aboveSpaceMm
  const wall = walls.liningMm + walls.coreMm + walls.claddingMm
  const reach = (frame.topBarLengthMm - width) / 2
  return {
    cavityLength: length,
    cavityWidth: width,
    cavityHeight: ledge,
    frameDepth: depth,
    frameTop: cavity.belowSpaceMm + depth,
    restHeight: cavity.belowSpaceMm + depth - frame.lugThicknessMm,
    restDepth: frame.lugThicknessMm + cavity.aboveSpaceMm,
    wallTop: ledge + covers,
    lugBearing: reach,
    wallThickness: wall,
    outerLength: length + 2 * wall,
    outerWidth: width + 2 * wall,
    floorThickness: floor.liningMm + floor.coreMm + floor.claddingMm,
    lidTop: ledge + covers + lid.liningMm + lid.coreMm + lid.claddingMm,
    roofLength: length + 2 * (wall + lid.rimClearanceMm + lid.rimThicknessMm + lid.overhangMm),
    roofWidth: width + 2 * (wall + lid.rimClearanceMm + lid.rimThicknessMm + lid.overhangMm),
  }
}

describe('the dimensions of a hive', () => {
  it('follow from the design by plain sums', () => {
    fc.assert(
      fc.property(hives, ({ design, hive: { dimensions } }) => {
        for (const [key, value] of Object.entries(expectedDimensions(design))) {
          expect(dimensions[key as keyof ReturnType<typeof expectedDimensions>]).toBeCloseTo(
            value,
            6,
          )
        }
      }),
      { numRuns: runs(250), seed: 201 },
    )
  })

  it('leave the lugs the wanted room at their ends, or more on a thick lining', () => {
    fc.assert(
      fc.property(hives, ({ design, hive: { dimensions: d } }) => {
        expect(d.lugEndClearance).toBeGreaterThanOrEqual(design.cavity.lugClearanceMm - 1e-9)
        expect(d.lugBearing + d.lugEndClearance).toBeCloseTo(d.seatWidth, 9)
        expect(d.seatWidth).toBeGreaterThanOrEqual(d.liningThickness)
        expect(d.lugBearing).toBeGreaterThanOrEqual(2 - 1e-6)
      }),
      { numRuns: runs(150), seed: 202 },
    )
  })
})

/** The middle along x of every part with that name's end. */
const middlesOf = (hive: Hive, id: RegExp): readonly number[] =>
  hive.parts
    .filter((p) => id.test(p.id))
    .flatMap(({ solids: [first] }) =>
      first?.kind === 'box' ? [(first.box.x0 + first.box.x1) / 2] : [],
    )

describe('the row', () => {
  it('fills the cavity from end to end without a gap or an overlap', () => {
    fc.assert(
      fc.property(hives, ({ hive: { row, dimensions } }) => {
        expect(row[0]?.x0).toBe(0)
        row.forEach((item, i) => {
          expect(item.x1).toBeGreaterThanOrEqual(item.x0)
          expect(row[i + 1]?.x0 ?? item.x1).toBe(item.x1)
        })
        expect(row.at(-1)?.x1).toBeCloseTo(dimensions.cavityLength, 6)
      }),
      { numRuns: runs(150), seed: 203 },
    )
  })

  it('has every place and board of the design, in their order', () => {
    fc.assert(
      fc.property(hives, ({ design: { cavity, frame }, hive: { row } }) => {
        const places = row.filter(({ kind }) => kind === 'frame' || kind === 'empty')
        expect(places).toHaveLength(cavity.frames)
        places.forEach((place, i) => {
          const hung = i < cavity.frames - cavity.emptyPlaces
          expect(place).toMatchObject(hung ? { kind: 'frame', number: i + 1 } : { kind: 'empty' })
          expect(place.x1 - place.x0).toBeCloseTo(frame.spacingMm, 6)
        })
        // Each board stands right of as many places as the design says.
        const placesBefore = (kind: string) =>
          row.flatMap((item, at) =>
            item.kind === kind
              ? [row.slice(0, at).filter((r) => r.kind === 'frame' || r.kind === 'empty').length]
              : [],
          )
        const wanted = [cavity.followerAAfterFrame, cavity.followerBAfterFrame]
          .slice(0, { none: 0, one: 1, two: 2 }[cavity.followers])
          .sort((a, b) => a - b)
        expect(placesBefore('follower')).toEqual(wanted)
        expect(placesBefore('divider')).toEqual(
          cavity.divider === 'fitted' ? [cavity.dividerAfterFrame] : [],
        )
      }),
      { numRuns: runs(150), seed: 204 },
    )
  })

  it('hangs the frames at the spacing, further apart only by a board and its two spaces', () => {
    fc.assert(
      fc.property(hives, ({ design, hive }) => {
        const { frame, cavity } = design
        const top = middlesOf(
          hive,
          frame.form === 'split' ? /upper-top-bar$/ : /^frame.*\/top-bar$/,
        )
        expect(top).toHaveLength(cavity.frames - cavity.emptyPlaces)
        const boards = hive.row.flatMap((item) =>
          item.kind === 'follower' || item.kind === 'divider' ? [item] : [],
        )
        top.forEach((x, i) => {
          expect(x).toBeCloseTo(hive.dimensions.frameCentres[i] ?? Number.NaN, 9)
          const next = top[i + 1]
          if (next === undefined) return
          const between = boards.find((b) => x < b.x0 && b.x0 < next)
          const extra = between ? between.x1 - between.x0 + 2 * cavity.rowEndSpaceMm : 0
          expect(next - x).toBeCloseTo(frame.spacingMm + extra, 6)
        })
      }),
      { numRuns: runs(150), seed: 205 },
    )
  })

  it('leaves a colony its play at the outer end, away from the divider', () => {
    fc.assert(
      fc.property(hives, ({ design: { cavity }, hive: { row } }) => {
        fc.pre(cavity.playMm > 0)
        const isParted = cavity.divider === 'fitted'
        expect(row.filter(({ kind }) => kind === 'play')).toHaveLength(isParted ? 2 : 1)
        expect(row.at(-1)?.kind).toBe('play')
        expect(row[0]?.kind === 'play').toBe(isParted)
      }),
      { numRuns: runs(100), seed: 206 },
    )
  })
})
