import type { Part } from '../../../hive/part.ts'
import type { Contact } from './contact.ts'

/** One place where parts are screwed or nailed: ways to do it, the plainest first. */
export interface Joint {
  readonly ways: readonly Contact[]
  /** Left out unless every rule can be kept: something else holds these parts as well. */
  readonly isExtra?: boolean
}

/** Faces that only glue holds. */
export interface GlueJoint {
  readonly parts: readonly Part[]
  readonly areaMm2: number
}

/** What one maker of joints found. */
export interface FoundJoints {
  readonly joints: readonly Joint[]
  readonly glued: readonly GlueJoint[]
}

/** A joint of the ways that there really are; none when no way is. */
export const jointOf = (...ways: readonly (Contact | undefined)[]): readonly Joint[] => {
  const real = ways.filter((way) => way !== undefined)
  return real.length === 0 ? [] : [{ ways: real }]
}
