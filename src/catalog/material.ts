/** What a row of the catalogue is mainly bought for; panels group their pick lists by it. */
export type MaterialFamily =
  | 'wood'
  | 'sheet'
  | 'insulation'
  | 'covering'
  | 'metal'
  | 'textile'
  | 'wax'

/**
 * How close a material may come to the colony.
 * `bare`: bees may touch it. `covered`: only behind a lining. `never`: not in the hive's inside.
 */
type InsideHive = 'bare' | 'covered' | 'never'

/** How the scene draws a material. It says nothing about heat or strength. */
export type MaterialSurface =
  | 'softwood'
  | 'hardwood'
  | 'plywood'
  | 'fibre'
  | 'foam-white'
  | 'foam-blue-grey'
  | 'foam-foil'
  | 'wool'
  | 'loose'
  | 'metal'
  | 'membrane'
  | 'cloth'
  | 'wax'

/** A short citation for each physical value. One that starts `from memory:` was not read again. */
interface MaterialSource {
  readonly conductivity: string
  readonly density: string
  readonly vapour: string
}

/** One material as a hobbyist buys it. All numbers are finite and above zero. */
export interface Material {
  /** Lower case with hyphens; stored in designs, so it never changes. */
  readonly id: string
  /** Plain words for lists and drawings. */
  readonly name: string
  readonly family: MaterialFamily
  /** `loose` is packed fill that takes the shape of its pocket. */
  readonly form: 'solid' | 'board' | 'batt' | 'loose' | 'sheet'
  /** Design value in W/(m K) near 10 °C; wood across the grain at about 12 % moisture. */
  readonly conductivityWPerMK: number
  /** Middle of the usual range, as used outdoors under cover. */
  readonly densityKgPerM3: number
  /** µ, dry cup; 1 is still air. Metal and foil count as 1e6. */
  readonly vapourResistanceFactor: number
  /** Usual metric thicknesses, thinnest first. */
  readonly thicknessesMm: readonly number[]
  /** Usual US thicknesses, actual not nominal, thinnest first. Each is exact from inches. */
  readonly thicknessesUsMm: readonly number[]
  readonly specificHeatJPerKgK: number
  readonly insideHive: InsideHive
  /** One sentence on safety for the bees and the keeper. */
  readonly beeNote: string
  readonly surface: MaterialSurface
  readonly source: MaterialSource
}
