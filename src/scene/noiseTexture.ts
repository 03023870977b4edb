import { Data3DTexture, LinearFilter, RedFormat, RepeatWrapping, UnsignedByteType } from 'three'

/** Cells along each edge of the noise block. */
const NOISE_CELLS = 32

/**
 * A block of even noise that repeats without a seam, made from a fixed seed so that every picture of
 * one design is the same. Texture look-ups are far cheaper than hashing in the shader.
 */
export const createNoiseTexture = (): Data3DTexture => {
  const data = new Uint8Array(NOISE_CELLS ** 3)
  // Marsaglia's xorshift (2003) with shifts 13, 17, 5.
  let state = 0x2545f491
  for (let i = 0; i < data.length; i++) {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    data[i] = state & 255
  }
  const texture = new Data3DTexture(data, NOISE_CELLS, NOISE_CELLS, NOISE_CELLS)
  texture.format = RedFormat
  texture.type = UnsignedByteType
  texture.minFilter = LinearFilter
  texture.magFilter = LinearFilter
  texture.wrapS = RepeatWrapping
  texture.wrapT = RepeatWrapping
  texture.wrapR = RepeatWrapping
  texture.unpackAlignment = 1
  texture.needsUpdate = true
  return texture
}
