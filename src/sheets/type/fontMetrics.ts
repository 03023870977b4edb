/** What setting type needs to know of a font: which characters it has and how wide they are. */
export interface FontMetrics {
  readonly covers: (codePoint: number) => boolean
  /** Width of a character as a share of the type size; 0 for one the font does not have. */
  readonly advance: (codePoint: number) => number
}

/**
 * Reads a TrueType or OpenType file's character map and widths (OpenType specification 1.9, tables
 * cmap formats 4 and 12, hhea, hmtx, head). Throws when the bytes are no such font.
 */
export const readFontMetrics = (bytes: Uint8Array): FontMetrics => {
  const data = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const tables = readTables(data)
  const at = (tag: string): number => {
    const offset = tables.get(tag)
    if (offset === undefined) throw new Error(`The font has no ${tag} table.`)
    return offset
  }
  const unitsPerEm = data.getUint16(at('head') + 18)
  const widthCount = data.getUint16(at('hhea') + 34)
  const hmtx = at('hmtx')
  const glyphOf = readCharacterMap(data, at('cmap'))
  return {
    covers: (codePoint) => glyphOf(codePoint) !== 0,
    advance: (codePoint) => {
      const glyph = glyphOf(codePoint)
      // All glyphs beyond the last width share it.
      const row = Math.min(glyph, widthCount - 1)
      return glyph === 0 ? 0 : data.getUint16(hmtx + 4 * row) / unitsPerEm
    },
  }
}

const readTables = (data: DataView): ReadonlyMap<string, number> => {
  const count = data.getUint16(4)
  return new Map(
    Array.from({ length: count }, (_, i) => {
      const row = 12 + 16 * i
      const tag = String.fromCharCode(...[0, 1, 2, 3].map((k) => data.getUint8(row + k)))
      return [tag, data.getUint32(row + 8)] as const
    }),
  )
}

/** Finds the map with the widest reach: a Unicode one, 32-bit before 16-bit. */
const readCharacterMap = (data: DataView, cmap: number): ((codePoint: number) => number) => {
  const count = data.getUint16(cmap + 2)
  const maps = Array.from({ length: count }, (_, i) => {
    const row = cmap + 4 + 8 * i
    const offset = cmap + data.getUint32(row + 4)
    return { platform: data.getUint16(row), format: data.getUint16(offset), offset }
  }).filter(({ platform }) => platform === 0 || platform === 3)
  const wide = maps.find((m) => m.format === 12)
  if (wide) return readGroups(data, wide.offset)
  const narrow = maps.find((m) => m.format === 4)
  if (narrow) return readSegments(data, narrow.offset)
  throw new Error('The font has no Unicode character map that can be read.')
}

/** Format 12: runs of code points that go with runs of glyphs. */
const readGroups = (data: DataView, offset: number): ((codePoint: number) => number) => {
  const glyphs = new Map<number, number>()
  const count = data.getUint32(offset + 12)
  for (let i = 0; i < count; i += 1) {
    const row = offset + 16 + 12 * i
    const [first, last] = [data.getUint32(row), data.getUint32(row + 4)]
    const glyph = data.getUint32(row + 8)
    for (let c = first; c <= last; c += 1) glyphs.set(c, glyph + c - first)
  }
  return (codePoint) => glyphs.get(codePoint) ?? 0
}

/** Format 4: segments of 16-bit code points, each with a shift or a table of glyphs. */
const readSegments = (data: DataView, offset: number): ((codePoint: number) => number) => {
  const glyphs = new Map<number, number>()
  const doubled = data.getUint16(offset + 6)
  const [ends, starts] = [offset + 14, offset + 16 + doubled]
  const [deltas, ranges] = [starts + doubled, starts + 2 * doubled]
  for (let k = 0; k < doubled; k += 2) {
    const range = data.getUint16(ranges + k)
    const delta = data.getInt16(deltas + k)
    const first = data.getUint16(starts + k)
    for (let c = first; c <= data.getUint16(ends + k) && c < 0xffff; c += 1) {
      const raw = range === 0 ? c : data.getUint16(ranges + k + range + 2 * (c - first))
      if (raw !== 0) glyphs.set(c, (raw + delta) & 0xffff)
    }
  }
  return (codePoint) => glyphs.get(codePoint) ?? 0
}
