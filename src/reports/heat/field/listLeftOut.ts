import type { Design } from '../../../design/schema.ts'
import { hasCovers } from '../../../hive/measure.ts'

/** What the model of a hive's heat leaves out or makes simpler, in plain words, a sentence each. */
export const listLeftOut = (design: Design): readonly string[] => [
  'Lid and floor are shut. What an open hive loses goes with moving air, which this reckoning cannot follow.',
  'Air that moves through entrances, vents and joints carries heat away; only the still air in them is counted.',
  'Frames, combs, bees, follower boards, a divider and a debris tray count as air inside, and this air is equally warm everywhere.',
  'Screws, hinges, latches and mesh are left out, and so are the landing boards, the handle, the legs of the stand and the ground.',
  'Insulation is taken to fill its pockets: the clearance it is cut with counts as insulation.',
  hasCovers(design)
    ? 'The hair of room round loose cover boards counts as board.'
    : 'The top bars that touch count as one closed board, and the air over them as still.',
  'The joint between the rim and the wall, and between the floor and its bearers, counts as still air.',
  ...(design.openings.entrances.some(({ form }) => form === 'holes')
    ? ['A row of round holes counts as a slot of the same width and area.']
    : []),
  ...(design.lid.form === 'sloped' ? ['The slope of the roof is cut into level steps.'] : []),
  'Sun, rain, frost on the roof and moist wood are left out.',
]
