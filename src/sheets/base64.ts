const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/'

/** Bytes as base64 text (RFC 4648), with padding. */
export const encodeBase64 = (bytes: Uint8Array): string => {
  const groups: string[] = []
  for (let i = 0; i < bytes.length; i += 3) {
    const [a = 0, b, c] = bytes.subarray(i, i + 3)
    const bits = (a << 16) | ((b ?? 0) << 8) | (c ?? 0)
    const letter = (shift: number) => ALPHABET[(bits >> shift) & 63] ?? ''
    groups.push(
      letter(18) +
        letter(12) +
        (b === undefined ? '=' : letter(6)) +
        (c === undefined ? '=' : letter(0)),
    )
  }
  return groups.join('')
}
