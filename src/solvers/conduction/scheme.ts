import type { Operator } from './operator.ts'

/** A world turned into equations: find u with (operator) u = `source`. */
export interface Equations {
  readonly operator: Operator
  /** Heat that air and given temperatures send in if the matter were at 0, W; laid out as unknowns. */
  readonly source: Float64Array
}
