import type { Design } from './schema.ts'

/** One thing that is wrong with a file or link. */
export interface Problem {
  /** Path of the field in the document: `walls.coreMm`; empty when the whole text is meant. */
  readonly field: string
  /** What is wrong, what is allowed, and what to do, for a person who has never seen JSON. */
  readonly message: string
}

/** What became of a text: a whole valid design, or the reasons why not. Nothing in between. */
export type ParsedDesign =
  | {
      readonly kind: 'ok'
      readonly design: Design
      /** The version that the text was written in, when it had to be brought up to date. */
      readonly migratedFrom: number | undefined
      /** Paths of fields and groups that were missing and took their defaults. */
      readonly filled: readonly string[]
    }
  | { readonly kind: 'bad'; readonly problems: readonly Problem[] }

/** A result with one problem that is not about a single field. */
export function refuseDesign(message: string, field = ''): ParsedDesign {
  return { kind: 'bad', problems: [{ field, message }] }
}
