import type { Design } from '../../design/schema.ts'
import { solidBounds } from '../../geometry/solid.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { firstFrame, presentIds } from './presentIds.ts'
import { proposeFix } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'frame' | 'cavity'>
  readonly hive: Pick<Hive, 'dimensions' | 'parts'>
}

/** The gaps round the frames (rules R01, R02 and R03). */
export const checkBeeSpace = (context: Context): readonly Check[] => [
  checkBeside(context),
  ...(context.design.cavity.closure === 'touching' ? [] : [checkAbove(context)]),
  checkBelow(context),
]

const checkBeside = ({ design, hive }: Context): Check =>
  assess({
    id: 'bee-space-beside',
    title: 'Bee space beside the frame',
    quantity: 'length',
    measured: (hive.dimensions.cavityWidth - design.frame.bodyLengthMm) / 2,
    band: { low: 6.5, high: 9, fixBelow: 6, fixAbove: 10 },
    why: 'Bees glue a smaller gap shut and build comb in a larger one, so the frames stick fast.',
    source: 'Bertrand, La conduite du rucher, p. 248 and 257',
    fix: () =>
      proposeFix('Make the space beside the frames 7.5 mm', [
        { field: 'cavity.endBarSpaceMm', value: 7.5 },
      ]),
    partIds: presentIds(hive.parts, [...firstFrame('side-bar-front'), 'front-wall/lining']),
  })

const checkAbove = ({ hive }: Context): Check =>
  assess({
    id: 'bee-space-above',
    title: 'Bee space above the frames',
    quantity: 'length',
    measured: hive.dimensions.coverLedgeHeight - hive.dimensions.frameTop,
    band: { low: 6, high: 8, fixBelow: 5.5, fixAbove: 10 },
    why: 'Bees glue the cover to the top bars in a smaller gap and build comb in a larger one.',
    source: 'Bertrand, La conduite du rucher, p. 248 and 294',
    fix: () =>
      proposeFix('Make the space above the frames 7 mm', [
        { field: 'cavity.aboveSpaceMm', value: 7 },
      ]),
    partIds: presentIds(hive.parts, [...firstFrame('top-bar').slice(0, 2), 'covers/board-1']),
  })

const checkBelow = ({ hive }: Context): Check => {
  const { frameTop, frameDepth } = hive.dimensions
  const floorTop = floorTopOf(hive)
  return assess({
    id: 'bee-space-below',
    title: 'Space below the frames',
    quantity: 'length',
    measured: frameTop - frameDepth - floorTop,
    band: { low: 10, high: 22, fixBelow: 6, fixAbove: 35 },
    why: 'Bees and debris need room under the frames; in a deep gap bees build comb. Best is 13 mm.',
    source: 'Bertrand, La conduite du rucher, p. 248; upper limit from memory',
    fix: () =>
      proposeFix('Make the space below the frames 13 mm', [
        { field: 'cavity.belowSpaceMm', value: 13 + floorTop },
      ]),
    partIds: presentIds(hive.parts, [
      ...firstFrame('bottom-bar').filter((id) => !id.includes('upper')),
      'floor/lining',
    ]),
  })
}

/** The floor's upper face is at 0; a debris tray lies on it. mm. */
const floorTopOf = ({ parts }: Context['hive']): number => {
  let top = 0
  for (const { motion, solids } of parts) {
    if (motion !== 'floor') continue
    for (const solid of solids) top = Math.max(top, solidBounds(solid).y1)
  }
  return top
}
