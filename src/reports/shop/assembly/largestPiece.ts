import { partMassKg } from '../partMass.ts'
import type { Lift, StageFacts } from './stage.ts'

/** The longest part that comes on in this stage, as something to lift; undefined when there is none. */
export const largestPiece = (
  { parts }: StageFacts,
  words: Pick<Lift, 'what' | 'alone'>,
): Lift | undefined => {
  const [first, ...others] = parts
  if (first === undefined) return undefined
  const piece = others.reduce((a, b) => (b.size.length > a.size.length ? b : a), first)
  return {
    ...words,
    massKg: partMassKg(piece),
    sidesMm: [piece.size.length, piece.size.width],
  }
}
