import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { weighFullFrame } from '../keeper/fullFrame.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { firstFrame, presentIds } from './presentIds.ts'
import { mmText, proposeFix, stepUp } from './proposeFix.ts'
import { topBarSagMm } from './topBarSag.ts'

/** Sag and mass of one frame full of honey (rules R16 and R17). */
export const checkLiftedFrame = ({
  design,
  hive,
}: {
  readonly design: Pick<Design, 'frame'>
  readonly hive: Pick<Hive, 'parts'>
}): readonly Check[] => {
  const { frame } = design
  const fullKg = weighFullFrame(frame, hive.parts).totalKg
  const sag = topBarSagMm({
    loadKg: fullKg,
    spanMm: frame.bodyLengthMm,
    widthMm: frame.topBarWidthMm,
    thicknessMm: frame.topBarThicknessMm,
  })
  const topBar = presentIds(hive.parts, firstFrame('top-bar').slice(0, 2))
  return [
    assess({
      id: 'top-bar-sag',
      title: 'Sag of a full top bar',
      quantity: 'length',
      measured: sag,
      band: { high: 1, fixAbove: 2 },
      why: 'A top bar that sags under honey eats up the bee space below the frame.',
      source: 'derived: beam on two supports, 9 GPa; common practice allows 1 mm',
      fix: () => {
        // Sag falls with the cube of the thickness.
        const thickness = stepUp(frame.topBarThicknessMm * Math.cbrt(sag), 1)
        return proposeFix(`Make the top bar ${mmText(thickness)} thick`, [
          { field: 'frame.topBarThicknessMm', value: thickness },
        ])
      },
      partIds: topBar,
    }),
    assess({
      id: 'frame-mass',
      title: 'One frame full of honey',
      quantity: 'mass',
      measured: fullKg,
      band: { high: 5, fixAbove: 8 },
      why: 'A frame is held out in front of you with both hands, again and again.',
      source: 'derived from the NIOSH lifting equation at arm’s length',
      partIds: topBar,
    }),
  ]
}
