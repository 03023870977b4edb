import type { FieldGrid } from '../../../solvers/conduction/fieldGrid.ts'
import type { PanelHeat } from '../panelHeat.ts'

/** One panel as the field sees it. */
export interface PanelField {
  readonly id: PanelHeat['id']
  /** Heat through its inner face for each degree, W/K. */
  readonly conductanceWPerK: number
  /** Inner area for each W/K: comparable to the R-values of the layers, air to air, m²K/W. */
  readonly resistanceM2KPerW: number
  /** Temperature factor of its coldest spot away from the openings; see `ColdestPlace.fRsi`. */
  readonly coldestFRsi: number
}

/** Where the heat goes; the shares add up to 1. */
export interface LossShare {
  readonly id: 'lid' | 'walls' | 'floor' | 'entrances'
  readonly conductanceWPerK: number
  readonly share: number
}

/** Heat that goes through one kind of edge beyond what the panels' own R-values explain. */
export interface EdgeLoss {
  readonly id: 'corners' | 'wall-lid' | 'wall-floor' | 'entrances'
  /** In plain words: `Upright corners`. */
  readonly name: string
  /** All edges of this kind together, inside, m. */
  readonly lengthM: number
  /** May be negative. */
  readonly extraWPerK: number
  /** Linear thermal transmittance over inside lengths, W/(m·K). */
  readonly psiWPerMK: number
  /** The area of wall that would lose as much, m². */
  readonly asWallM2: number
}

/** The coldest place of the inner surface, a share of the way from outside to inside. */
export interface ColdestPlace {
  /** Temperature factor: 0 as cold as outside, 1 as warm as the air inside (ISO 10211, ISO 13788). */
  readonly fRsi: number
  /** In the closed hive, mm. */
  readonly pointMm: readonly [number, number, number]
  readonly partId: string | undefined
  /** In plain words: `in the corner of front wall, left end wall and floor`. */
  readonly place: string
}

/** What steady conduction in three dimensions says about a hive. Plain data, cheap to send. */
export interface HeatFieldAnswer {
  /** `preview` while the design is being changed, `full` when it rests. */
  readonly quality: 'preview' | 'full'
  readonly conductanceWPerK: number
  /** Certain bounds for the hive as it is modelled, W/K. */
  readonly lowerWPerK: number
  readonly upperWPerK: number
  readonly panels: readonly PanelField[]
  readonly shares: readonly LossShare[]
  readonly edges: readonly EdgeLoss[]
  /** Away from the openings, where air from outside washes the surface anyway. */
  readonly coldest: ColdestPlace
  /** As a share of the way from outside to inside, how warm all but 1 % of the outer skin is at most. */
  readonly warmestOutsideShare: number
  /**
   * Relative change of the conductance when slopes are cut into twice as many steps; 0 without slopes,
   * and in a preview, which does not measure it.
   */
  readonly slopeStepError: number
  readonly leftOut: readonly string[]
  readonly grid: FieldGrid
  readonly unknowns: number
  readonly iterations: number
  readonly hasConverged: boolean
}
