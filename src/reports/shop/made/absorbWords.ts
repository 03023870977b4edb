import { fieldTitle } from '../../../design/fieldAt.ts'

/** How each field takes something up, said without lengths; the others are named by their label. */
const WORDS: ReadonlyMap<string, string> = new Map([
  ['cavity.playMm', 'Let the play in the row take it up'],
  ['cavity.rowEndSpaceMm', 'Let the space at the boards and ends of the row take it up'],
  ['cavity.endBarSpaceMm', 'Let the bee space beside the frames take it up'],
  ['cavity.aboveSpaceMm', 'Let the bee space above the frames take it up'],
  ['cavity.belowSpaceMm', 'Let the space below the frames take it up'],
  ['cavity.coverLedgeMm', 'Let the ledge under the cover boards take it up'],
  ['cavity.lugClearanceMm', 'Let the room behind the lugs take it up'],
  ['cavity.followerSideGapMm', 'Let the gap beside the follower take it up'],
  ['cavity.followerBottomGapMm', 'Let the gap under the follower take it up'],
  ['lid.overhangMm', 'Let the overhang of the roof take it up'],
  ['lid.rimDropMm', 'Let the lap of the rim take it up'],
  ['lid.rimClearanceMm', 'Let the gap between rim and wall take it up'],
  ['stand.workingHeightMm', 'Let the working height take it up'],
])

export const absorbWords = (path: string, changeMm: number): string => {
  const words = WORDS.get(path)
  if (words !== undefined) return words
  if (path.endsWith('.foamClearanceMm')) return 'Let the room round the insulation take it up'
  return `${changeMm < 0 ? 'Take it off' : 'Add it to'} "${fieldTitle(path)}"`
}
