/** Why a text was refused, in words for the person who typed it. */
export interface ParseFailure {
  readonly kind: 'error'
  readonly message: string
}

/** A refusal that says what is wrong and, where it can, what to type instead. */
export function refuse(message: string): ParseFailure {
  return { kind: 'error', message }
}
