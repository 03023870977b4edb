/** Outside sizes in mm of one whole frame, or of one half of a split frame. */
export interface FrameDimensions {
  readonly topBarLengthMm: number
  /** Along the row of frames. */
  readonly topBarWidthMm: number
  readonly topBarThicknessMm: number
  /** Thickness of the ear that rests on the wall; never more than the top bar's. */
  readonly lugThicknessMm: number
  /** Between the outsides of the two side bars. */
  readonly bodyLengthMm: number
  /** Top of top bar to bottom of bottom bar. */
  readonly depthMm: number
  readonly sideBarThicknessMm: number
  /** Lower part of the side bar, along the row. */
  readonly sideBarWidthMm: number
  /** Self-spacing upper part of the side bar, along the row. */
  readonly shoulderWidthMm: number
  readonly bottomBarThicknessMm: number
  readonly bottomBarWidthMm: number
}

/** A frame pattern a design can start from. Makers differ, so every number may be overwritten. */
export interface FrameStandard {
  readonly id: string
  readonly name: string
  readonly dimensions: FrameDimensions
  /** Centre to centre of neighbouring frames in the brood nest. */
  readonly spacingMm: number
  readonly source: string
  readonly note: string
}

const langstrothDeep: FrameDimensions = {
  topBarLengthMm: 483,
  topBarWidthMm: 27,
  topBarThicknessMm: 19,
  lugThicknessMm: 9.5,
  bodyLengthMm: 448,
  depthMm: 232,
  sideBarThicknessMm: 9.5,
  sideBarWidthMm: 28,
  shoulderWidthMm: 35,
  bottomBarThicknessMm: 9.5,
  bottomBarWidthMm: 19,
}

const langstrothSource =
  'Depth and 19 in top bar: published frame table of a hive-building handbook (dummies.com). ' +
  '17 5/8 in across the side bars, 3/8 in lug and 3/4 in top bar: from memory, trade sizes.'

// The bars fill 24 mm of the depth, which leaves the 192 mm of comb that a 216 mm frame holds.
const britishNational: FrameDimensions = {
  topBarLengthMm: 432,
  topBarWidthMm: 27,
  topBarThicknessMm: 16,
  lugThicknessMm: 9.5,
  bodyLengthMm: 356,
  depthMm: 216,
  sideBarThicknessMm: 9.5,
  sideBarWidthMm: 22,
  shoulderWidthMm: 35,
  bottomBarThicknessMm: 8,
  bottomBarWidthMm: 22,
}

/** Frame patterns, Langstroth first, `custom` last. */
export const FRAME_STANDARDS: readonly FrameStandard[] = [
  {
    id: 'langstroth-deep',
    name: 'Langstroth deep',
    dimensions: langstrothDeep,
    spacingMm: 35,
    source: langstrothSource,
    note: 'The frame most extractors are built for; two deep halves make a tall split frame.',
  },
  {
    id: 'langstroth-medium',
    name: 'Langstroth medium',
    dimensions: { ...langstrothDeep, depthMm: 159 },
    spacingMm: 35,
    source: langstrothSource,
    note: 'Lighter to lift than the deep. Depth 6 1/4 in.',
  },
  {
    id: 'langstroth-shallow',
    name: 'Langstroth shallow',
    dimensions: { ...langstrothDeep, depthMm: 137 },
    spacingMm: 35,
    source: langstrothSource,
    note: 'Made for honey; low for a brood nest. Depth 5 3/8 in.',
  },
  {
    id: 'dadant',
    name: 'Dadant-Blatt brood',
    // 20 + 267 of comb + 13 = 300.
    dimensions: {
      topBarLengthMm: 470,
      topBarWidthMm: 25,
      topBarThicknessMm: 20,
      lugThicknessMm: 10,
      bodyLengthMm: 435,
      depthMm: 300,
      sideBarThicknessMm: 7.5,
      sideBarWidthMm: 25,
      shoulderWidthMm: 37,
      bottomBarThicknessMm: 13,
      bottomBarWidthMm: 20,
    },
    spacingMm: 37,
    source:
      'Bertrand, La conduite du rucher, p. 252-256: 435 mm across the side bars, comb 420 by ' +
      '265 to 270, spacing 37. Top bar, lug, depth and bar sections from memory.',
    note: 'Too deep for many small extractors: check yours before you build.',
  },
  {
    id: 'layens',
    name: 'Layens',
    // Top bar 10 over a stiffener 10; bottom bar 20 on edge over feet of 5: 20 + 370 + 25 = 415.
    dimensions: {
      topBarLengthMm: 368,
      topBarWidthMm: 25,
      topBarThicknessMm: 20,
      lugThicknessMm: 10,
      bodyLengthMm: 330,
      depthMm: 415,
      sideBarThicknessMm: 10,
      sideBarWidthMm: 25,
      shoulderWidthMm: 38,
      bottomBarThicknessMm: 25,
      bottomBarWidthMm: 10,
    },
    spacingMm: 38.35,
    source:
      'Bertrand, La conduite du rucher, p. 289-292: lengths, depth, thicknesses, and 20 frames ' +
      'in 767 mm. Widths along the row from memory.',
    note:
      'Taller than wide. The bottom bar stands on edge and is counted with the 5 mm feet that ' +
      'the side bars leave below it. Needs a large extractor.',
  },
  {
    id: 'british-national',
    name: 'British National brood',
    dimensions: britishNational,
    spacingMm: 35,
    source:
      'Wikibooks Beekeeping/British National and dave-cushman.net frame pages: 17 in top bar, ' +
      '14 by 8 1/2 in frame. Bar thicknesses from memory.',
    note: 'Long ears of 38 mm. Side bars are also sold 36.5 and 38 mm wide.',
  },
  {
    id: 'british-14x12',
    name: 'British 14 x 12',
    dimensions: { ...britishNational, depthMm: 305 },
    spacingMm: 35,
    source:
      'beehivejournal.blogspot.com, National hive (2010): frame 14 by 12 in. Other members as ' +
      'the National; bar thicknesses from memory.',
    note: 'A National made deeper. Heavy when full, and too deep for many small extractors.',
  },
  {
    id: 'zander',
    name: 'Zander',
    dimensions: {
      topBarLengthMm: 477,
      topBarWidthMm: 28,
      topBarThicknessMm: 15,
      lugThicknessMm: 10,
      bodyLengthMm: 420,
      depthMm: 220,
      sideBarThicknessMm: 10,
      sideBarWidthMm: 25,
      shoulderWidthMm: 35,
      bottomBarThicknessMm: 8,
      bottomBarWidthMm: 20,
    },
    spacingMm: 35,
    source:
      'honigimker.de hive types: depth 220 (it prints the top bar as 475). Top bar 477, length ' +
      '420 and bar sections from memory.',
    note: 'A metric frame; check the length of your top bars, as 475 and 477 are both sold.',
  },
  {
    id: 'german-normal',
    name: 'German Normal',
    dimensions: {
      topBarLengthMm: 394,
      topBarWidthMm: 28,
      topBarThicknessMm: 15,
      lugThicknessMm: 10,
      bodyLengthMm: 370,
      depthMm: 223,
      sideBarThicknessMm: 10,
      sideBarWidthMm: 25,
      shoulderWidthMm: 35,
      bottomBarThicknessMm: 8,
      bottomBarWidthMm: 20,
    },
    spacingMm: 35,
    source: 'honigimker.de hive types: 394 by 223. Length 370 and bar sections from memory.',
    note: 'Short ears of 12 mm, so the seat in the wall must be cut with care.',
  },
  {
    id: 'custom',
    name: 'My own frame',
    dimensions: langstrothDeep,
    spacingMm: 35,
    source: 'Starts from the Langstroth deep numbers.',
    note: 'Measure your own frames with a caliper and type in what you find.',
  },
]

/** The standard with this id. Throws an Error that names the id if there is none. */
export function frameStandardById(id: string): FrameStandard {
  const standard = FRAME_STANDARDS.find((row) => row.id === id)
  if (standard === undefined) throw new Error(`There is no frame standard called "${id}".`)
  return standard
}
