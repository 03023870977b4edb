import type { Part } from '../../../hive/part.ts'

/** Which face of a part looks where, in words; by what the part is. */
export const outsideWords = (part: Part): string => {
  if (part.bought) return EITHER
  for (const [piece, words] of WORDS) if (part.id.includes(piece)) return words
  return EITHER
}

const EITHER = 'Either way round'

/** The first that an id holds decides. */
const WORDS: readonly (readonly [string, string])[] = [
  ['-wall/lining', 'Best face inside, towards the bees; the other is glued to the frame'],
  ['-wall/cladding', 'Best face out, towards the weather'],
  ['-wall/block', 'Its hole lies over the hole in the lining'],
  ['floor/lining', 'Best face up, towards the bees'],
  ['floor/cladding', 'Best face down, towards the ground'],
  ['floor/tray', 'Smooth face up'],
  ['lid/lining', 'Best face down, towards the bees'],
  ['lid/rim', 'Best face out, towards the weather'],
  ['lid/handle', 'Round its edges where the fingers go'],
  ['rim/hinge-rail', 'Best face out, towards the weather'],
  ['roof/closer', 'Slanting edge up, best face out'],
  ['roof/firring', 'Slanting edge up, square edge on the lid'],
  ['roof/insulation', 'Slanting face up'],
  ['roof/cover-sheet', 'Best face up'],
  ['openings/landing', 'Best face up, bevelled edge to the wall'],
  ['covers/board', 'Either face up'],
  ['divider/sheet', 'Ears up'],
  ['skin-', 'Best face out'],
  ['follower-', EITHER],
  ['lower-top-bar', 'Groove down, towards the lower comb'],
  ['top-bar', 'Lugs level with its upper face, groove down'],
  ['side-bar', 'Wide shoulder up'],
]
