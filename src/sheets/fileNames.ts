/** Long enough for any name worth reading, short enough for every file system (255 bytes). */
const MOST_BYTES = 120

/** Names that Windows keeps for devices. */
const RESERVED = /^(con|prn|aux|nul|com\d|lpt\d)$/i

/**
 * A file name from a design's name: `quarry-lane-long-hive-build-sheet.pdf`. Letters and figures of any
 * script stay; everything else becomes a hyphen, so no system and no shell trips over it. A name with
 * nothing left gives `hive`.
 */
export const fileNameFor = (designName: string, what: string, extension: string): string => {
  const base = shorten(plainName(designName)) || 'hive'
  const safe = RESERVED.test(base) ? `hive-${base}` : base
  const tail = plainName(what)
  return `${safe}${tail === '' ? '' : `-${tail}`}.${extension}`
}

const plainName = (text: string): string =>
  text
    .normalize('NFC')
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}\p{M}]+/gu, '-')
    .replace(/^[-\p{M}]+|-+$/gu, '')

/** Cut to `MOST_BYTES` of UTF-8 between characters. */
const shorten = (name: string): string => {
  const encoder = new TextEncoder()
  let kept = ''
  let bytes = 0
  for (const letter of name.match(/.\p{M}*/gsu) ?? []) {
    bytes += encoder.encode(letter).length
    if (bytes > MOST_BYTES) break
    kept += letter
  }
  return kept.replace(/-+$/, '')
}
