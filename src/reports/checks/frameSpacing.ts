import type { Design } from '../../design/schema.ts'
import { assess } from './assess.ts'
import type { Check, FieldChange } from './check.ts'
import { mmText, proposeFix } from './proposeFix.ts'

/** Distance from comb to comb where brood is reared (rule R06). */
export const checkFrameSpacing = ({
  design,
}: {
  readonly design: Pick<Design, 'frame' | 'cavity'>
}): readonly Check[] => {
  const { spacingMm } = design.frame
  return [
    assess({
      id: 'frame-spacing',
      title: 'Frame spacing',
      quantity: 'length',
      measured: spacingMm,
      band: { low: 34, high: 38, fixBelow: 32, fixAbove: 40 },
      why: 'Closer combs leave no room for brood and bees; wider ones grow thick and crooked.',
      source: 'Bertrand, La conduite du rucher, p. 248; 35 mm is the common spacing',
      fix: () => spaceFrames(design, spacingMm < 34 ? 35 : 38),
    }),
  ]
}

/** The shoulders set the spacing, no bar may be wider than it, and bars that touch must be as wide. */
const spaceFrames = ({ frame, cavity }: Pick<Design, 'frame' | 'cavity'>, spacingMm: number) => {
  const changes: FieldChange[] = [
    { field: 'frame.spacingMm', value: spacingMm },
    { field: 'frame.shoulderWidthMm', value: spacingMm },
  ]
  if (cavity.closure === 'touching' || frame.topBarWidthMm > spacingMm) {
    changes.push({ field: 'frame.topBarWidthMm', value: spacingMm })
  }
  for (const key of ['sideBarWidthMm', 'bottomBarWidthMm'] as const) {
    if (frame[key] > spacingMm) changes.push({ field: `frame.${key}`, value: spacingMm })
  }
  return proposeFix(`Space the frames ${mmText(spacingMm)} apart`, changes)
}
