import type { Design } from '../../design/schema.ts'
import type { Hive, Opening } from '../../hive/hive.ts'
import { OPENING_EDGE } from '../../hive/placeOpenings.ts'
import { assess, type Band, distanceOutside, worstIn } from './assess.ts'
import type { Check, FieldChange } from './check.ts'
import { type ColonyRoom, colonyRooms } from './colonies.ts'
import { proposeFix } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'openings'>
  readonly hive: Pick<Hive, 'openings' | 'row' | 'dimensions'>
}

/** mm². */
const AREA: Band = { low: 1000, high: 2500 }
const AIM_MM2 = 1400
const NUMBER: Band = { low: 1, high: 2, fixBelow: 1 }
/** Timber left between two holes of a row, mm. */
const WEB_MM = 10

/** How many entrances each colony has and how large they are in summer (rules R23 and R24). */
export const checkEntrances = (context: Context): readonly Check[] => {
  const rooms = colonyRooms(context.hive)
  const byColony = rooms.map(({ colony }) => entrancesOf(context, colony))
  return [checkNumber(context, rooms, byColony), ...checkArea(context, byColony)]
}

const entrancesOf = ({ hive }: Context, colony: number): readonly Opening[] =>
  hive.openings.filter((o) => o.kind === 'entrance' && o.colony === colony)

const checkNumber = (
  context: Context,
  rooms: readonly ColonyRoom[],
  byColony: readonly (readonly Opening[])[],
): Check =>
  assess({
    id: 'entrance-number',
    title: 'Entrances for each colony',
    quantity: 'count',
    measured:
      worstIn(
        NUMBER,
        byColony.map(({ length }) => length),
      ) ?? 0,
    band: NUMBER,
    why: 'Two colonies each need one of their own; more than two are hard to defend.',
    source: 'Penn State Extension: one main entrance and at most a second, upper one',
    fix: () => moveEntrance(context, rooms, byColony),
  })

/** Gives a colony without an entrance one that another colony can spare, or that meets the divider. */
const moveEntrance = (
  context: Context,
  rooms: readonly ColonyRoom[],
  byColony: readonly (readonly Opening[])[],
) => {
  const without = rooms.filter((_, i) => byColony[i]?.length === 0)
  const [room] = without
  if (room === undefined || without.length > 1) return undefined
  const spare = [...entrancesOf(context, 0), ...byColony.flatMap((list) => list.slice(1))].find(
    ({ wall }) => wall === 'front' || wall === 'back',
  )
  if (spare === undefined) return undefined
  return proposeFix('Move an entrance to the colony without one', [
    {
      field: `openings.entrances.${spare.index}.centreMm`,
      value: Math.round((room.x0 + room.x1) / 2),
    },
  ])
}

const checkArea = (
  context: Context,
  byColony: readonly (readonly Opening[])[],
): readonly Check[] => {
  const colonies = byColony.filter((openings) => openings.length > 0)
  const measured = worstIn(AREA, colonies.map(sumArea))
  if (measured === undefined) return []
  return [
    assess({
      id: 'entrance-area',
      title: 'Entrance area for each colony',
      quantity: 'area',
      measured,
      band: AREA,
      why: 'A small entrance chokes a strong colony in summer; a large one is hard to defend.',
      source: 'Seeley and Morse, 1976: 10 to 40 cm²; Bertrand 17, Layens 20, Warré 18 to 24 cm²',
      fix: () =>
        proposeFix(
          'Make the entrances about 14 cm² for each colony',
          colonies
            .filter((openings) => distanceOutside(AREA, sumArea(openings)) > 0)
            .flatMap((openings) => openings.flatMap((o) => resize(context, o, openings.length))),
        ),
    }),
  ]
}

const sumArea = (openings: readonly Opening[]): number =>
  openings.reduce((sum, { area }) => sum + area, 0)

/** An equal share of the wanted area for one entrance, by its width; moved if the corner is in the way. */
const resize = (
  { design, hive }: Context,
  { index, colony }: Opening,
  shares: number,
): readonly FieldChange[] => {
  const entrance = design.openings.entrances[index]
  if (entrance === undefined) return []
  const { form, heightMm, wall, centreMm, winterWidthMm } = entrance
  const aim = AIM_MM2 / shares
  const holes = Math.max(1, Math.round(aim / ((Math.PI * heightMm ** 2) / 4)))
  const width = form === 'slot' ? Math.round(aim / heightMm) : holes * (heightMm + WEB_MM) - WEB_MM
  const [from, to] = wallStretch(hive, wall, colony)
  const edge = width / 2 + OPENING_EDGE
  const centre = within(centreMm, from + edge, to - edge)
  const path = `openings.entrances.${index}`
  return [
    { field: `${path}.widthMm`, value: width },
    ...(centreMm === centre ? [] : [{ field: `${path}.centreMm`, value: centre }]),
    ...(winterWidthMm > width ? [{ field: `${path}.winterWidthMm`, value: width }] : []),
  ]
}

/** The colony's stretch of a wall, from the corner that openings are measured from, mm. */
const wallStretch = (
  { row, dimensions }: Context['hive'],
  wall: Opening['wall'],
  colony: number,
): readonly [number, number] => {
  if (wall === 'left' || wall === 'right') return [0, dimensions.cavityWidth]
  const room = colonyRooms({ row }).find((candidate) => candidate.colony === colony)
  return room === undefined ? [0, dimensions.cavityLength] : [room.x0, room.x1]
}

/** The value itself if it lies between the bounds, else the next whole millimetre inside. */
const within = (value: number, low: number, high: number): number => {
  if (value < low) return Math.ceil(low)
  return value > high ? Math.floor(high) : value
}
