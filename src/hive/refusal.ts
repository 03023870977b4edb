/** Why a design can't be built, and which number to change. Values are in the stored unit. */
export interface Refusal {
  /** Path of the field in the document: `walls.coreMm`. */
  readonly field: string
  readonly message: string
  /** A value of that field that would do, when one is known. */
  readonly suggestion?: number | undefined
}
