import { strToU8 } from 'fflate'

/** Four bytes that change with any change of the text: FNV-1a, 32 bits (Fowler, Noll, Vo). */
export function checksum(text: string): readonly number[] {
  let hash = 0x811c9dc5
  for (const byte of strToU8(text)) hash = Math.imul(hash ^ byte, 0x01000193)
  return [24, 16, 8, 0].map((shift) => (hash >>> shift) & 0xff)
}
