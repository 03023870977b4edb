import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { firstFrame, presentIds } from './presentIds.ts'
import { mmText, proposeFix, stepUp } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'frame'>
  readonly hive: Pick<Hive, 'dimensions' | 'parts'>
}

/** Deepest frame that every common extractor takes, and the longest top bar, mm. */
const DEEPEST = 232
const LONGEST = 483

/** Whether frames, or their halves, go into common extractors (rules R13 and R14). */
export const checkExtractor = (context: Context): readonly Check[] => [
  checkDepth(context),
  checkTopBar(context),
]

const checkDepth = ({ design, hive }: Context): Check => {
  const { form, depthMm } = design.frame
  const isSplit = form === 'split'
  return assess({
    id: 'extractor-depth',
    title: isSplit ? 'Depth of each half, for the extractor' : 'Frame depth, for the extractor',
    quantity: 'length',
    measured: depthMm,
    // Halves are split for the extractor's sake; a deep whole frame may have a large one waiting.
    band: isSplit ? { high: DEEPEST, fixAbove: DEEPEST } : { high: DEEPEST },
    why: 'Frames deeper than a Langstroth deep do not go into many small extractors.',
    source: 'derived: cage of a 380 mm drum takes 250 mm; Langstroth deep is 232 mm',
    fix: () =>
      isSplit
        ? proposeFix(`Make each half ${mmText(DEEPEST)} deep`, [
            { field: 'frame.depthMm', value: DEEPEST },
          ])
        : splitFrame(depthMm),
    partIds: presentIds(hive.parts, firstFrame('side-bar-front')),
  })
}

const splitFrame = (depthMm: number) => {
  const half = stepUp(depthMm / 2, 1)
  if (half > DEEPEST) return undefined
  return proposeFix(`Split the frame into two halves of ${mmText(half)}`, [
    { field: 'frame.form', value: 'split' },
    { field: 'frame.depthMm', value: half },
  ])
}

const checkTopBar = ({ design, hive }: Context): Check =>
  assess({
    id: 'extractor-top-bar',
    title: 'Top bar length, for the extractor',
    quantity: 'length',
    measured: design.frame.topBarLengthMm,
    band: { high: LONGEST },
    why: 'Longer top bars stand too tall in most cages, and foundation is not sold to fit.',
    source: 'common practice: the Langstroth top bar of 19 in is the longest in wide use',
    fix: () =>
      LONGEST - hive.dimensions.cavityWidth < 2 * 7.5
        ? undefined
        : proposeFix(`Shorten the top bar to ${mmText(LONGEST)}`, [
            { field: 'frame.topBarLengthMm', value: LONGEST },
          ]),
    partIds: presentIds(hive.parts, firstFrame('top-bar').slice(0, 2)),
  })
