import type { FieldEdit } from '../../../design/setField.ts'

/** A change of the design that takes up a measured or a spoiled size. */
export interface MadeRemedy {
  /** What to do, in words without lengths. */
  readonly text: string
  readonly changes: readonly FieldEdit[]
  /** Rows whose size it changes, before and after; made parts are never among them. */
  readonly moved: readonly {
    readonly label: string
    readonly name: string
    readonly side: 'length' | 'width' | 'thickness'
    readonly beforeMm: number
    readonly afterMm: number
  }[]
  /** Checks that it would newly fail, by name. */
  readonly newlyFailed: readonly string[]
}

/** Ways out for one part that was cut to another size than planned. */
export interface MistakeAnswer {
  /** Positive when the part came out too large. */
  readonly offByMm: number
  readonly side: 'length' | 'width' | 'thickness'
  /** Uncut parts that can take it up, best first. */
  readonly absorb: readonly MadeRemedy[]
  /** A strip that fills the gap, where a strip does no harm. */
  readonly shim: string | undefined
  /** Rows that the spoiled part can still be cut down to, largest first. */
  readonly canBecome: readonly {
    readonly label: string
    readonly name: string
    readonly sizeMm: readonly [number, number, number]
  }[]
  /** When the part is still too large. */
  readonly trim: string | undefined
}
