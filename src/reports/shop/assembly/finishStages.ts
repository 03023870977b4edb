import type { Part } from '../../../hive/part.ts'
import { STEP } from '../../../hive/steps.ts'
import { type StageFacts, type StageSpec, sentences } from './stage.ts'

/** Minutes for a square metre and coat by brush; invented for the example, like all times. */
const BRUSH_MINUTES_PER_M2 = [8, 15] as const
/** From one coat to the next, hours. Common practice; the tin decides. */
const HOURS_BETWEEN_COATS = 24

const isBare = ({ finish }: StageFacts): boolean => finish === undefined || finish.coats === 0
const isDipped = ({ finish }: Pick<StageFacts, 'finish'>): boolean => finish?.id === 'wax-dip'

/** Wood that rain reaches: what is painted. */
const isOutside = (part: Part): boolean =>
  part.group === 'stand' ||
  part.id.includes('-wall/cladding') ||
  part.id.startsWith('lid/rim-') ||
  part.id.startsWith('roof/closer-') ||
  part.id.startsWith('openings/landing-') ||
  part.id === 'lid/handle' ||
  part.id === 'rim/hinge-rail'

const outsideParts = ({ hive }: StageFacts): readonly Part[] =>
  hive.parts.filter((part) => part.motion !== 'frame' && isOutside(part))

const brushMinutes = ({ finish }: StageFacts): readonly [number, number] => {
  const work = (finish?.areaM2 ?? 0) * Math.max(1, finish?.coats ?? 0)
  return [work * BRUSH_MINUTES_PER_M2[0], work * BRUSH_MINUTES_PER_M2[1]]
}

/** Before the boards go on: a hive with foam in it must never see hot wax. */
export const DIP_STAGE: StageSpec = {
  stage: STEP.finish,
  unit: 'body',
  scope: 'hive',
  view: 'three-quarter',
  title: 'Dip the outside boards in wax',
  isDue: isDipped,
  worksOn: outsideParts,
  instructions: () => [
    'Do this outdoors, before the boards go onto the hive. Foam, glue and linings must stay out of the hot wax.',
    'Cut every outside board to size and drill it first. Dip cladding, rim, landing boards and stand one by one, and let them drip.',
    'Glue does not hold on wax: leave bare, or mask, where these boards are glued.',
  ],
  cautions: () => ['finish-outside', 'smoker'],
  otherWaitHours: () => HOURS_BETWEEN_COATS,
  extraMinutes: brushMinutes,
}

/** Oil or paint by brush, when everything outside is on and nothing is inside yet. */
export const BRUSH_STAGE: StageSpec = {
  stage: STEP.finish,
  unit: 'body',
  scope: 'hive',
  view: 'three-quarter',
  title: (f) => `Finish the outside: ${f.finish?.name.toLowerCase() ?? 'none'}`,
  isDue: (f) => !isBare(f) && !isDipped(f),
  worksOn: outsideParts,
  instructions: (f) =>
    sentences(
      'Sand sharp edges round and dust everything off. Close the lid, and mask openings, hinges and latches.',
      `Brush ${coatWords(f)} onto everything that rain reaches, end grain and lower edges first. The inside, the rest strips and the underside of the lid stay bare.`,
      'Let each coat dry before the next. The frames can be made meanwhile.',
      f.finish?.id === 'linseed-oil' &&
        'Rags with linseed oil can catch fire by themselves. Spread them out flat outdoors to dry.',
    ),
  cautions: () => ['finish-outside'],
  otherWaitHours: ({ finish }) => HOURS_BETWEEN_COATS * (finish?.coats ?? 1),
  extraMinutes: (f) => {
    const [low, high] = brushMinutes(f)
    return [low + 20, high + 40]
  },
}

const coatWords = ({ finish }: StageFacts): string =>
  finish === undefined || finish.coats === 1 ? 'one coat' : `${finish.coats} coats`

/** Nothing is added; the hive is tried as it will be used. */
export const LAST_STAGE: StageSpec = {
  stage: STEP.lastCheck,
  unit: 'body',
  scope: 'hive',
  view: 'three-quarter',
  title: 'Try everything before the bees come',
  isDue: () => true,
  instructions: (f) => [
    'Open the lid, let go, and see that it stays. Close it: it lies on the walls all round.',
    'Drop the floor and close it again. Both latches hold it.',
    'Lift a frame out from each end and from the middle. It never rubs.',
    'Put a lamp inside in the dark, with lid and floor closed: light may come out only through entrances and vents.',
    isBare(f)
      ? 'Set the hive level where it will stand.'
      : 'Set the hive level where it will stand. Bees come only when the finish has cured and smells of nothing.',
  ],
  cautions: () => ['lid-and-floor', 'long-hive-lift', 'wind-load', 'snow-load', 'stings'],
  otherWaitHours: ({ finish }) => 24 * (finish?.curingDays ?? 0),
  extraMinutes: () => [20, 40],
}
