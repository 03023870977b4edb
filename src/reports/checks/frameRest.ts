import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess } from './assess.ts'
import type { Check, FieldChange } from './check.ts'
import { presentIds } from './presentIds.ts'
import { mmText, proposeFix, stepDown, stepUp } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'frame' | 'cavity' | 'walls'>
  readonly hive: Pick<Hive, 'dimensions' | 'parts'>
}

const LEAST_BEARING = 7.5
const MOST_END_CLEARANCE = 3
/** A longer top bar fits few extractors (rule R14). */
const LONGEST_TOP_BAR = 483

/** How the lugs lie on their ledge (rules R08, R09, R10). */
export const checkFrameRest = (context: Context): readonly Check[] => [
  ...(context.design.cavity.closure === 'touching' ? [] : [checkDepth(context)]),
  checkSeat(context),
  checkBearing(context),
  checkEndClearance(context),
]

const restIds = ({ hive }: Context): readonly string[] =>
  presentIds(hive.parts, ['front-wall/lining', 'ring/rest-front-wall'])

const checkDepth = (context: Context): Check => {
  const { lugThicknessMm: lug } = context.design.frame
  return assess({
    id: 'frame-rest-depth',
    title: 'Depth of the frame rest',
    quantity: 'length',
    measured: context.hive.dimensions.restDepth,
    band: { low: lug + 6, high: lug + 8, fixBelow: lug + 5.5, fixAbove: lug + 10 },
    why: 'The rest must hold the lug and the bee space above it; a shallow rest glues the cover down.',
    source: 'Langstroth, Layens and Warré rests agree: lug plus 6 to 8 mm (Bertrand, p. 289)',
    fix: () =>
      proposeFix('Cut the rest 7 mm deeper than the lug', [
        { field: 'cavity.aboveSpaceMm', value: 7 },
      ]),
    partIds: restIds(context),
  })
}

const checkSeat = (context: Context): Check =>
  assess({
    id: 'frame-rest-seat',
    title: 'Width of the frame rest',
    quantity: 'length',
    measured: context.hive.dimensions.seatWidth,
    band: { low: 9.5, fixBelow: 8 },
    why: 'On a narrow ledge a frame slips off, or its lug splits.',
    source: 'Langstroth 9.5 mm, Layens 12.5 mm (Bertrand, p. 289); lower limit from memory',
    fix: () => reachFurther(context, 9.5),
    partIds: restIds(context),
  })

const checkBearing = (context: Context): Check =>
  assess({
    id: 'lug-bearing',
    title: 'Lug on its ledge',
    quantity: 'length',
    measured: context.hive.dimensions.lugBearing,
    band: { low: LEAST_BEARING, fixBelow: 5 },
    why: 'A full comb hangs on this much of each lug; with less it drops when it is pushed aside.',
    source: 'derived: Warré 7.5 mm, Langstroth 8 mm, Layens 11.5 mm',
    fix: () => reachFurther(context, LEAST_BEARING),
    partIds: restIds(context),
  })

/** Less space beside the frame if that is enough, else a longer top bar if extractors still take it. */
const reachFurther = ({ design, hive }: Context, wanted: number) => {
  const { topBarLengthMm, bodyLengthMm } = design.frame
  const space = stepDown((topBarLengthMm - bodyLengthMm) / 2 - wanted, 0.5)
  if (space >= 6.5 && space <= 9) {
    return proposeFix(`Make the space beside the frames ${mmText(space)}`, [
      { field: 'cavity.endBarSpaceMm', value: space },
    ])
  }
  const length = stepUp(hive.dimensions.cavityWidth + 2 * wanted, 1)
  if (length > LONGEST_TOP_BAR) return undefined
  return proposeFix(`Make the top bar ${mmText(length)} long`, [
    { field: 'frame.topBarLengthMm', value: length },
  ])
}

const checkEndClearance = (context: Context): Check =>
  assess({
    id: 'lug-end-clearance',
    title: 'Room at the ends of the lugs',
    quantity: 'length',
    measured: context.hive.dimensions.lugEndClearance,
    band: { low: 1, high: MOST_END_CLEARANCE },
    why: 'Without room the lugs bind when the wood swells; with too much the frames hang askew.',
    source: 'Bertrand, La conduite du rucher, p. 292: 1 mm; Langstroth about 1.6 mm',
    fix: () => clearLugs(context),
    partIds: restIds(context),
  })

const clearLugs = ({ design, hive }: Context) => {
  const { lugBearing, lugEndClearance } = hive.dimensions
  if (lugEndClearance < 1) {
    return proposeFix('Leave 2 mm at the end of each lug', [
      { field: 'cavity.lugClearanceMm', value: 2 },
    ])
  }
  // The ledge is at least as wide as the lining is thick.
  const lining = stepDown(lugBearing + MOST_END_CLEARANCE, 0.5)
  if (lugBearing + 2 < 9.5 && lining < 9.5) return undefined
  const changes: FieldChange[] = []
  if (design.cavity.lugClearanceMm > MOST_END_CLEARANCE) {
    changes.push({ field: 'cavity.lugClearanceMm', value: 2 })
  }
  if (design.walls.liningMm > lining) changes.push({ field: 'walls.liningMm', value: lining })
  const label =
    design.walls.liningMm > lining
      ? `Line the walls with ${mmText(lining)}`
      : 'Leave 2 mm at the end of each lug'
  return proposeFix(label, changes)
}
