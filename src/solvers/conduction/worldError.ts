/** A world that has no answer. The message says what is wrong and what to do, for a person to read. */
export class WorldError extends Error {
  override readonly name = 'WorldError'
}
