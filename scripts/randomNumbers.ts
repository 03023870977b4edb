/** Numbers from 0 up to 1 that look random; the same seed gives the same ones. */
export type RandomNumbers = () => number

/** A counter stirred by multiplications (Steele, Lea & Flood 2014, SplitMix, in its 32-bit form). */
export const randomNumbers = (seed: number): RandomNumbers => {
  let state = seed >>> 0
  return () => {
    state = (state + 0x9e3779b9) >>> 0
    let mixed = Math.imul(state ^ (state >>> 16), 0x21f0aaad)
    mixed = Math.imul(mixed ^ (mixed >>> 15), 0x735a2d97)
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 2 ** 32
  }
}

/** A whole number from `least` to `most`, both included. */
export const wholeBetween = (random: RandomNumbers, least: number, most: number): number =>
  least + Math.floor(random() * (most - least + 1))

/** The entries in another order. */
export const shuffle = <Entry>(random: RandomNumbers, entries: readonly Entry[]): Entry[] => {
  const left = [...entries]
  const mixed: Entry[] = []
  while (left.length > 0) mixed.push(...left.splice(wholeBetween(random, 0, left.length - 1), 1))
  return mixed
}
