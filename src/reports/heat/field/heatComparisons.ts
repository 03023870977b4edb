/** What a change of construction against the rails' bridge would bring, by the same solver. */
export interface RemedyAnswer {
  readonly id: 'strip' | 'staggered' | 'foam-over'
  /** `A strip of foam over each rail`. */
  readonly name: string
  /** What the builder would do, a sentence or two. */
  readonly how: string
  readonly conductanceWPerK: number
  /** Less than the hive as it is, for each degree; negative if it costs heat. */
  readonly savedWPerK: number
}

/** Another home for bees, by the same solver. */
export interface BaselineAnswer {
  readonly id: string
  /** `Plain single-wall box of the same volume`. */
  readonly name: string
  /** Sizes and where they come from, a sentence or two. */
  readonly about: string
  readonly volumeL: number
  readonly conductanceWPerK: number
  readonly lowerWPerK: number
  readonly upperWPerK: number
}

export interface HeatComparisons {
  readonly remedies: readonly RemedyAnswer[]
  readonly baselines: readonly BaselineAnswer[]
}
