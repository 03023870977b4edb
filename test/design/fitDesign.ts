import type { Design, EntranceDesign, VentDesign } from '../../src/design/schema.ts'

/** Moves the numbers of a random design so that they suit each other, as a careful person's would. */
export function fitDesign(design: Design): Design {
  const framed = { ...design, frame: fitFrame(design), cavity: fitRow(design) }
  const walled = { ...framed, walls: fitWalls(framed) }
  return { ...walled, stand: fitStand(walled), openings: fitOpenings(walled) }
}

/** Top bars that close the top are as wide as the spacing. */
function fitFrame({ frame, cavity }: Design): Design['frame'] {
  return cavity.closure === 'touching' ? { ...frame, topBarWidthMm: frame.spacingMm } : frame
}

/** Every board stands at a place of its own, followers on both sides of the divider. */
function fitRow({ cavity, frame, floor }: Design): Design['cavity'] {
  const { frames } = cavity
  const divider = 2 + (cavity.dividerAfterFrame % (frames - 3))
  const left = 1 + (cavity.followerAAfterFrame % (divider - 1))
  const right = divider + 1 + (cavity.followerBAfterFrame % (frames - divider))
  const onlyRight = cavity.followers === 'one' && cavity.followerAAfterFrame % 2 === 1
  const mostCovers = Math.floor((frames * frame.spacingMm) / 60)
  return {
    ...cavity,
    emptyPlaces: Math.min(cavity.emptyPlaces, frames - 2),
    dividerAfterFrame: divider,
    followerAAfterFrame: onlyRight ? right : left,
    followerBAfterFrame: right,
    followerThicknessMm: Math.max(cavity.followerThicknessMm, 24),
    followerSideGapMm: Math.min(cavity.followerSideGapMm, cavity.endBarSpaceMm),
    // A debris tray slides out under the follower.
    followerBottomGapMm: floor.tray
      ? cavity.belowSpaceMm
      : Math.min(cavity.followerBottomGapMm, cavity.belowSpaceMm),
    coverSegments: Math.max(2, Math.min(cavity.coverSegments, mostCovers)),
  }
}

/** The core has room for the ledges of lugs and covers with a strip outside them, and for a leg. */
function fitWalls({ frame, cavity, walls }: Design): Design['walls'] {
  const reach = (frame.topBarLengthMm - frame.bodyLengthMm) / 2 - cavity.endBarSpaceMm
  const seat = Math.max(walls.liningMm, reach + cavity.lugClearanceMm)
  const forLedges = Math.ceil(seat + cavity.coverLedgeMm + 12 - walls.liningMm)
  const forLegs = Math.ceil(40 - walls.claddingMm)
  return { ...walls, coreMm: Math.max(walls.coreMm, forLedges, forLegs) }
}

/** Legs no wider than the wall and at least 200 mm long under any floor of ordinary thickness. */
function fitStand({ frame, cavity, walls, floor, stand }: Design): Design['stand'] {
  const widest = Math.floor(walls.coreMm + walls.claddingMm - 2)
  const depth = frame.form === 'split' ? 2 * frame.depthMm : frame.depthMm
  const underneath = floor.liningMm + floor.coreMm + floor.claddingMm + 8
  const lowest = Math.ceil(cavity.belowSpaceMm + depth + underneath + 200)
  return {
    ...stand,
    legWidthMm: Math.min(stand.legWidthMm, widest),
    workingHeightMm: Math.max(stand.workingHeightMm, lowest),
  }
}

/** Openings of one wall share its length with wood between; those without room are left out. */
function fitOpenings({ frame, cavity, openings, lid }: Design): Design['openings'] {
  const rowLength = cavity.frames * frame.spacingMm
  const cavityWidth = frame.bodyLengthMm + 2 * cavity.endBarSpaceMm
  const lengthOf = (wall: EntranceDesign['wall']) =>
    wall === 'front' || wall === 'back' ? rowLength : cavityWidth
  const all: readonly (EntranceDesign | VentDesign)[] = [...openings.entrances, ...openings.vents]
  const place = <O extends EntranceDesign | VentDesign>(opening: O): readonly O[] => {
    const onWall = all.filter((other) => other.wall === opening.wall)
    const share = (lengthOf(opening.wall) - 30) / onWall.length
    // 72 mm: two openings keep the width of a block and its landing boards between them.
    const widthMm = Math.min(opening.widthMm, Math.floor(share) - 72)
    const centreMm = Math.round(15 + share * (onWall.indexOf(opening) + 0.5))
    return widthMm < 20 ? [] : [{ ...opening, widthMm, centreMm }]
  }
  const entrances = openings.entrances
    .flatMap(place)
    .map((e) => ({ ...e, winterWidthMm: Math.min(e.winterWidthMm, e.widthMm) }))
  // Vents stay below the lid's rim and, on its hinge side, below the rail for the hinges.
  const vents = openings.vents.flatMap(place).map((v) => {
    const lowered = lid.rimDropMm + (v.wall === lid.hingeSide ? 60 : 12)
    return { ...v, belowRestMm: Math.max(v.belowRestMm, lowered) }
  })
  return { ...openings, entrances, vents }
}
