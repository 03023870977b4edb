/** Something that hands lift or hold. */
export interface Lift {
  readonly name: string
  /** What the hands carry, kg; for a hinged board the pull at its free edge, given as a mass. */
  readonly massKg: number
}

export interface KeeperReport {
  /** Everything that is lifted in a season, heaviest first. */
  readonly lifts: readonly Lift[]
  /** The heaviest that is carried free of a hinge. */
  readonly heaviestLift: Lift
  /** Honey in one whole frame when every cell is capped. */
  readonly honeyPerFrameKg: number
  readonly combAreaPerFrameDm2: number
  /** Force at the handle that starts the lid, N. */
  readonly lidForceN: number
  /** Hive with all frames full of honey. */
  readonly fullMassKg: number
  /** How far the floor can swing before it meets the ground or the stand. 0 when it is not hinged. */
  readonly floorDropLimitDeg: number
}
