const MOST_NAMES = 3

/**
 * One name for equal parts. Equal names stay as they are; of others the words that all of them begin
 * or end with are kept when at least two are left (`Front wall lining` and `Back wall lining` give
 * `Wall lining`); else up to three names are joined by a slash. Empty for no names.
 */
export const rowName = (names: readonly string[]): string => {
  const distinct = [...new Set(names)]
  const [first] = distinct
  if (first === undefined || distinct.length === 1) return first ?? ''
  const words = distinct.map((name) => name.split(' '))
  const common = [...commonStart(words), ...commonEnd(words)]
  if (common.length >= 2) return capitalise(common.join(' '))
  const shown = distinct.slice(0, MOST_NAMES).join(' / ')
  return distinct.length > MOST_NAMES ? `${shown} …` : shown
}

const shortest = (words: readonly (readonly string[])[]): number =>
  Math.min(...words.map((list) => list.length))

const commonStart = (words: readonly (readonly string[])[]): readonly string[] => {
  const [first = []] = words
  // One word of the shortest name is left over, so that start and end never count a word twice.
  const differs = first.findIndex((word, i) => words.some((list) => list[i] !== word))
  return first.slice(0, Math.min(differs < 0 ? first.length : differs, shortest(words) - 1))
}

const commonEnd = (words: readonly (readonly string[])[]): readonly string[] => {
  const taken = commonStart(words).length
  const room = shortest(words) - taken
  const [first = []] = words
  let count = 0
  while (count < room && words.every((list) => list.at(-1 - count) === first.at(-1 - count))) {
    count += 1
  }
  return count === 0 ? [] : first.slice(-count)
}

const capitalise = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
