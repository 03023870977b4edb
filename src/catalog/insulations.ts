import { FIBRES } from './fibres.ts'
import { FOAMS } from './foams.ts'
import type { Material } from './material.ts'

/** Everything sold to keep heat in: foams first, then fibres and loose fills. */
export const INSULATIONS: readonly Material[] = [...FOAMS, ...FIBRES]
