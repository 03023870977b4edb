const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'

/** The label of the row at `index`, counted from 0: A … Z, AA … AZ, BA … */
export const rowLabel = (index: number): string => {
  const last = LETTERS[index % LETTERS.length] ?? ''
  return index < LETTERS.length ? last : rowLabel(Math.floor(index / LETTERS.length) - 1) + last
}
