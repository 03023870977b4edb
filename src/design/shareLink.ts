import { deflateSync, inflateSync, strFromU8, strToU8 } from 'fflate'
import { decodeBase64url, encodeBase64url } from './base64url.ts'
import { checksum } from './checksum.ts'
import { packDesign, unpackDesign } from './designDifference.ts'
import { formatDesign } from './formatDesign.ts'
import { LINK_LAYOUT, type LinkLayout } from './linkLayout.ts'
import { formatVersion1, LINK_LAYOUT_1 } from './linkVersion1.ts'
import { type ParsedDesign, refuseDesign } from './parsedDesign.ts'
import { readDesign } from './readDesign.ts'
import { DESIGN_VERSION, type Design } from './schema.ts'

/**
 * A design as the end of a web address: `2.` and, as base64url, four bytes of checksum and the
 * deflated JSON of what differs from the default design (see `designDifference.ts`). The number in
 * front is the link's version: it grows with the document's version and with any change of the
 * defaults or the order of fields, on which old links depend. The checksum is over the whole design,
 * so a link that a changed default would turn into another hive is refused, not opened wrong.
 */
export function encodeShare(design: Design): string {
  const packed = deflateSync(strToU8(JSON.stringify(packDesign(design))), { level: 9 })
  const sum = checksum(formatDesign(design))
  return `${PREFIX}${encodeBase64url(new Uint8Array([...sum, ...packed]))}`
}

/**
 * Reads what `encodeShare` wrote, with or without the `#` before it. Never throws; whatever is not a
 * whole link of this version or version 1 is refused with a message.
 */
export function decodeShare(hash: string): ParsedDesign {
  if (hash.length > MAX_LINK_CHARACTERS) {
    return refuseDesign('This link is far too long to hold a design. Ask for it again.')
  }
  const [, version, data = ''] = /^#?(\d{1,6})\.([^.]*)$/.exec(hash.trim()) ?? []
  if (version === undefined) return refuseDesign(BROKEN)
  if (Number(version) > LINK_VERSION) return refuseDesign(newerMessage(Number(version)))
  const layout = LAYOUTS.get(Number(version))
  const bytes = decodeBase64url(data)
  const json = bytes && inflateJson(bytes.subarray(SUM_BYTES))
  const unpacked = layout && unpackDesign(json, layout)
  if (bytes === undefined || unpacked === undefined) return refuseDesign(BROKEN)
  const isOld = Number(version) === 1
  const read = readDesign({ combwright: isOld ? 1 : DESIGN_VERSION, ...unpacked })
  if (read.kind === 'bad') return read
  const sum = checksum(isOld ? formatVersion1(unpacked) : formatDesign(read.design))
  return sum.every((byte, i) => byte === bytes[i]) ? read : refuseDesign(CHANGED)
}

const LINK_VERSION = 2
const LAYOUTS: ReadonlyMap<number, LinkLayout> = new Map([
  [1, LINK_LAYOUT_1],
  [LINK_VERSION, LINK_LAYOUT],
])
const PREFIX = `${LINK_VERSION}.`
const SUM_BYTES = 4
// Every field changed, every list full and the longest texts make about 60 000 characters.
const MAX_LINK_CHARACTERS = 200_000
const MAX_JSON_BYTES = 500_000

const BROKEN =
  'This link does not hold a whole design. A part of it may have been lost on the way: ' +
  'copy all of it, or ask for the design as a file.'

const CHANGED =
  'This link is damaged, or was made by a Combwright with other starting values. ' +
  'Ask for the design as a file.'

function newerMessage(version: number): string {
  return (
    `This link was made by a newer Combwright (version ${version}); this one reads up to ` +
    `${LINK_VERSION}. Open it with the newer Combwright.`
  )
}

/** The JSON in deflated bytes; undefined when they are damaged or swell beyond any design. */
function inflateJson(packed: Uint8Array): unknown {
  // Output beyond the buffer is cut off, so a small link can't unfold into a huge text.
  const room = new Uint8Array(MAX_JSON_BYTES + 1)
  try {
    const bytes = inflateSync(packed, { out: room })
    return bytes.length > MAX_JSON_BYTES ? undefined : JSON.parse(strFromU8(bytes))
  } catch {
    return undefined
  }
}
