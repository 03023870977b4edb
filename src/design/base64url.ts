const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_'

/** Bytes as text that may stand in an address as it is: base64url without padding (RFC 4648 §5). */
export function encodeBase64url(bytes: Uint8Array): string {
  let text = ''
  for (let i = 0; i < bytes.length; i += 3) {
    // Three bytes are 24 bits and make four letters of 6 bits; a rest of n bytes makes n + 1 letters.
    const bits = ((bytes[i] ?? 0) << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0)
    const letters = Math.min(3, bytes.length - i) + 1
    for (let k = 0; k < letters; k += 1) text += ALPHABET.charAt((bits >> (18 - 6 * k)) & 63)
  }
  return text
}

/** The bytes that `encodeBase64url` wrote; undefined when a character is not of its alphabet. */
export function decodeBase64url(text: string): Uint8Array | undefined {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4))
  let bits = 0
  let held = 0
  let at = 0
  for (const letter of text) {
    const value = ALPHABET.indexOf(letter)
    if (value === -1) return undefined
    bits = ((bits << 6) | value) & 0xffff
    held += 6
    if (held < 8) continue
    held -= 8
    bytes[at] = (bits >> held) & 0xff
    at += 1
  }
  return bytes
}
