/** Text that a typeface can print in full, and how many characters had to be replaced. */
export interface PrintableText {
  readonly text: string
  readonly missing: number
}

/** Stands for each character that the typeface does not have. */
const STAND_IN = '?'

/**
 * Makes any text printable: one `?` for each character (as people count them, so one for an emoji of
 * several code points) that the font lacks, with the number replaced. Line ends become `\n`, other
 * white space a space; controls and marks that only steer the direction of writing print nothing and are
 * dropped. Compatibility letters (full-width, mathematical) fall back to their plain form.
 */
export const printableText = (
  raw: string,
  covers: (codePoint: number) => boolean,
): PrintableText => {
  const characters = [...tidy(raw)]
  const printed: string[] = []
  let missing = 0
  // Whether the characters that follow belong to one already replaced.
  let inReplaced = false
  let isJoined = false
  let pendingFlag = false
  for (const c of characters) {
    const belongs = isJoined || /[\p{M}\p{Emoji_Modifier}]/u.test(c)
    isJoined = c === JOINER
    if (isJoined) continue
    if (belongs && inReplaced) continue
    // Two regional letters are one flag.
    const isFlagPart = /\p{Regional_Indicator}/u.test(c)
    if (isFlagPart && pendingFlag) {
      pendingFlag = false
      continue
    }
    pendingFlag = isFlagPart
    const shown = findPrintable(c, covers)
    inReplaced = shown === undefined
    if (shown === undefined) missing += 1
    printed.push(shown ?? STAND_IN)
  }
  return { text: printed.join(''), missing }
}

const JOINER = '\u200d'

/**
 * Code points that print nothing: controls, direction and format marks, variation selectors. The joiner
 * is kept to see which characters belong together; the Arabic number signs are formats that do print.
 */
const INVISIBLE = /(?!\n|\u200d|[\u0600-\u0605\u06dd\u08e2])[\p{Cc}\p{Cf}\p{Variation_Selector}]/gu

const tidy = (raw: string): string =>
  raw
    .normalize('NFC')
    .replace(/\r\n|[\r\n\v\f\u0085\u2028\u2029]/g, '\n')
    .replaceAll('\t', ' ')
    .replace(INVISIBLE, '')
    .replace(/[^\S\n]/gu, ' ')

const findPrintable = (c: string, covers: (codePoint: number) => boolean): string | undefined => {
  const isCovered = (text: string) =>
    [...text].every((d) => d === '\n' || covers(d.codePointAt(0) ?? 0))
  if (isCovered(c)) return c
  const plain = c.normalize('NFKC')
  return plain !== c && plain.length > 0 && isCovered(plain) ? plain : undefined
}
