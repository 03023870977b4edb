/** How one kind of joint is fastened. Lengths in mm. */
export interface JointFamily {
  /** Screws of these diameters are looked at. */
  readonly leastDiameterMm: number
  readonly mostDiameterMm: number
  /** Furthest apart in a row. */
  readonly spacingMm: number
  /** `row`: along the whole face; `pair`: two where they fit; `one`; `given` by the contact. */
  readonly pattern: 'row' | 'pair' | 'one' | 'given'
  readonly glue: boolean
  readonly mayNail: boolean
  /** The head may be sunk into thick timber. */
  readonly maySink: boolean
  readonly metal: 'plain' | 'washer'
  /** Glue or other parts carry the joint: the smaller distances for clamping do. */
  readonly isLight: boolean
  /** What else a builder should know. */
  readonly rule: string
}

export type FamilyId =
  | 'sheet'
  | 'board'
  | 'butt'
  | 'corner'
  | 'strip'
  | 'rim'
  | 'handle'
  | 'firring'
  | 'deck'
  | 'deck-end'
  | 'cover'
  | 'cover-end'
  | 'hinge-rail'
  | 'bearer'
  | 'stand'
  | 'leaf'
  | 'landing'
  | 'follower'

const family = (
  [leastDiameterMm, mostDiameterMm]: readonly [number, number],
  pattern: JointFamily['pattern'],
  spacingMm: number,
  rule: string,
  rest: Partial<JointFamily> = {},
): JointFamily => ({
  leastDiameterMm,
  mostDiameterMm,
  pattern,
  spacingMm,
  rule,
  glue: false,
  mayNail: false,
  maySink: false,
  metal: 'plain',
  isLight: false,
  ...rest,
})

/**
 * Spacings: 150 mm along the edges of sheets and 300 mm for boards and roofs are common practice for
 * sheathing (from memory); the least distances come from the published rule.
 */
export const JOINT_FAMILIES: Readonly<Record<FamilyId, JointFamily>> = {
  sheet: family([3.5, 4.5], 'row', 150, 'Flush heads, every 150 mm at most', {
    glue: true,
    mayNail: true,
  }),
  board: family([3.5, 5], 'one', 0, 'Each board on one line, so that it can swell and shrink', {
    isLight: true,
    mayNail: true,
  }),
  butt: family([3.5, 5], 'pair', 0, 'Glue and two', { glue: true, isLight: true }),
  corner: family([4, 5], 'row', 150, 'From inside, before the insulation goes in', { glue: true }),
  strip: family([3.5, 4.5], 'row', 200, 'Heads sunk flush, every 200 mm at most', {
    glue: true,
    mayNail: true,
  }),
  rim: family([3.5, 5], 'row', 250, 'Every 250 mm at most', { glue: true }),
  handle: family([3.5, 5], 'pair', 0, 'From behind, before the rim goes on', { glue: true }),
  firring: family([3.5, 6], 'one', 0, 'Down into the rails of the lid; sink the head', {
    isLight: true,
    glue: true,
    maySink: true,
  }),
  deck: family([3.5, 5], 'row', 200, 'Every 200 mm at most', { glue: false }),
  cover: family([3.5, 5], 'row', 300, 'Tight enough to press the washer, no more', {
    metal: 'washer',
  }),
  'deck-end': family([3.5, 5], 'one', 0, 'Through the low end of the firring, into the lid', {
    isLight: true,
  }),
  'cover-end': family([3.5, 5], 'one', 0, 'Through the low end of the firring, into the lid', {
    isLight: true,
    metal: 'washer',
  }),
  'hinge-rail': family([4, 5], 'row', 150, 'Every 150 mm at most, into the wall frame', {
    glue: true,
  }),
  bearer: family([4, 6], 'row', 250, 'From below, head sunk', { maySink: true }),
  stand: family([5, 6], 'pair', 0, 'Two screws, predrilled', { maySink: true }),
  leaf: family([3, 4.5], 'given', 0, 'As many as the leaf has holes'),
  landing: family([3, 3.5], 'pair', 0, 'From behind the cladding board, before it goes on', {
    isLight: true,
    glue: true,
  }),
  follower: family([3, 3.5], 'row', 120, 'They hold it until the glue is dry', {
    isLight: true,
    glue: true,
    mayNail: true,
  }),
}
