/**
 * The hive's leading dimensions, all mm. The cavity's left end is x = 0, the floor's upper face y = 0,
 * the middle of the hive z = 0; so inside dimensions never move when a wall grows.
 */
export interface HiveDimensions {
  /** Inside, along the row; the closed formula of `row.ts`. */
  readonly cavityLength: number
  /** Inside, between the long walls' linings: frame length + 2 bee spaces. */
  readonly cavityWidth: number
  /** From the floor to the underside of the cover (or lid): below + frame + above. */
  readonly cavityHeight: number
  /** Whole frame: one depth, or both halves. */
  readonly frameDepth: number
  readonly frameTop: number
  /** Height of the ledge that the lugs hang on. */
  readonly restHeight: number
  /** Height of the ledge that the cover boards lie on; the underside of the covers. */
  readonly coverLedgeHeight: number
  /** Top edge of the walls, where the lid lies. */
  readonly wallTop: number
  /** Depth of the rest below the cover ledge: lug + space above. */
  readonly restDepth: number
  /** Width of the ledge under each lug. */
  readonly seatWidth: number
  /** How much of each lug lies on the ledge. */
  readonly lugBearing: number
  /** Room between each lug's end and the rail behind it. */
  readonly lugEndClearance: number
  readonly liningThickness: number
  readonly coreThickness: number
  readonly claddingThickness: number
  readonly wallThickness: number
  /** Over the cladding. */
  readonly outerLength: number
  readonly outerWidth: number
  /** From the underside of the floor or bearer, whichever is lower, to the highest point of the roof. */
  readonly outerHeight: number
  readonly floorThickness: number
  /** Lining + core + top skin of the lid. */
  readonly lidThickness: number
  /** Height of the top of the insulated lid panel. */
  readonly lidTop: number
  /** Highest point of the roof. */
  readonly roofTop: number
  readonly roofLength: number
  readonly roofWidth: number
  readonly bearerHeight: number
  /** Height of the ground: negative. */
  readonly groundHeight: number
  /** Middle of each frame along x. */
  readonly frameCentres: readonly number[]
}
