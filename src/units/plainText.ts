/**
 * Typed text with its look-alike characters made one: word processors and phones turn `'` `"` `-`
 * and the space into other characters, and people copy sizes from them. Lower case, trimmed, one
 * space for a run of spaces; two single marks become one inch mark. Fraction characters such as ½
 * are kept, because a plain `1/2` in their place could join the digits beside it.
 */
export function plainText(text: string): string {
  return text
    .replace(/[\u200b\u2060]/g, '')
    .replace(/\s+/g, ' ')
    .replace(/[\u2010-\u2015\u2212\ufe63\uff0d]/g, '-')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[\u2018\u2019\u2032\u02b9\u00b4]/g, "'")
    .replace(/[\u201c\u201d\u2033\u02ba]/g, '"')
    .replace(/''/g, '"')
    .replace(/[\u00ba\u02da]/g, '°')
    .trim()
    .toLowerCase()
}

/** Typed text in quotation marks for a message, cut short so that a pasted page fits on a line. */
export function quoteTyped(text: string): string {
  return text.length > 30 ? `"${text.slice(0, 30)}…"` : `"${text}"`
}
