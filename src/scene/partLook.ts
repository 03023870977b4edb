import { Color } from 'three'
import type { Part } from '../hive/part.ts'
import { INK, lookOf } from './palette.ts'

/** Numbers that the shaders need of one part. Colours are linear. */
export interface PartLook {
  readonly colour: Color
  readonly surface: number
  /** 0 x, 1 y, 2 z, 3 none. */
  readonly grainAxis: number
  /** 0 to 1, the same for the same part id, so that a board keeps its grain while the hive changes. */
  readonly seed: number
  /** Weight of its ink edges, px, and how dark they are. */
  readonly edge: { readonly weight: number; readonly alpha: number }
}

const GRAIN_AXIS = { x: 0, y: 1, z: 2, none: 3 } as const

const colourByHex = new Map<string, Color>()

const linearColour = (hex: string): Color => {
  const known = colourByHex.get(hex)
  if (known !== undefined) return known
  const colour = new Color(hex)
  colourByHex.set(hex, colour)
  return colour
}

export const lookOfPart = (part: Part): PartLook => {
  const look = lookOf(part.material)
  return {
    colour: linearColour(look.colour),
    surface: look.surface,
    grainAxis: GRAIN_AXIS[part.grain],
    seed: hashId(part.id),
    edge: edgeOf(part),
  }
}

/** Two weights for standing edges: what stands thirty times in a row is drawn finer. */
const edgeOf = (part: Part): PartLook['edge'] =>
  part.motion === 'frame' ? { weight: 0.7, alpha: 0.55 } : { weight: 1.1, alpha: 0.85 }

/** FNV-1a (Fowler, Noll, Vo), folded to 0..1. */
const hashId = (id: string): number => {
  let h = 0x811c9dc5
  for (let i = 0; i < id.length; i++) {
    h ^= id.charCodeAt(i)
    h = Math.imul(h, 0x01000193)
  }
  return ((h >>> 0) % 10007) / 10007
}

export const INK_COLOUR: readonly [number, number, number] = hexBytes(INK)

/** sRGB bytes of a hex colour. */
export function hexBytes(hex: string): readonly [number, number, number] {
  const n = Number.parseInt(hex.slice(1), 16)
  return [n >> 16, (n >> 8) & 255, n & 255]
}
