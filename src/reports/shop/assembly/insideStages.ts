import { STEP } from '../../../hive/steps.ts'
import { frameGlueUps } from './glueUps.ts'
import {
  GLUE_SET_H,
  hasPiece,
  lettered,
  type StageFacts,
  type StageSpec,
  sentences,
} from './stage.ts'

const JOINT_WORDS = {
  pegs: 'with the pegs, dry, so that they come apart for the extractor',
  screws: 'with the screws, which come out again for the extractor',
  straps: 'with the straps, which come off again for the extractor',
}

const followerLines = (facts: StageFacts): readonly string[] =>
  sentences(
    hasPiece(facts, 'follower-') &&
      (facts.design.cavity.followerForm === 'plain'
        ? `Glue and ${facts.fasten} each ${lettered('follower sheet', 'follower sheet', facts)} to its ${lettered('top bar', 'follower top bar', facts)}.`
        : `For each follower board glue the ${lettered('strips', 'strip', facts)} and the ${lettered('top bar', 'follower top bar', facts)} onto one ${lettered('skin', 'follower skin', facts)}, lay in the ${lettered('insulation', 'follower insulation', facts)}, and close it with the other skin.`),
    hasPiece(facts, 'follower-') &&
      'Hang the follower boards in. They slide along the ledges and touch nothing else.',
    hasPiece(facts, 'divider/') &&
      `Set the ${lettered('divider', 'divider', facts)} in its place. It must fit so closely that no bee passes: under it, beside it and over the ledges.`,
  )

/** What hangs or lies in the finished box. */
export const INSIDE_STAGES: readonly StageSpec[] = [
  {
    stage: STEP.loose,
    unit: 'body',
    scope: 'open-hive',
    // Mesh lies outside, everything else inside.
    view: (f) => (hasPiece(f, 'openings/') ? 'three-quarter' : 'inside'),
    title: 'Add the loose pieces',
    instructions: (f) =>
      sentences(
        hasPiece(f, 'openings/mesh') &&
          `Fix the ${lettered('mesh', 'mesh', f)} over each vent from outside, with no gap round it and no sharp wire.`,
        hasPiece(f, 'openings/reducer') &&
          `The ${lettered('entrance reducer', 'reducer', f)} goes into its entrance without glue; you take it out in spring.`,
        hasPiece(f, 'floor/tray') &&
          `Lay the ${lettered('debris tray', 'tray', f)} on the floor. It slides freely.`,
        ...followerLines(f),
      ),
    glueHours: GLUE_SET_H,
  },
  {
    stage: STEP.frames,
    unit: 'frames',
    scope: 'unit',
    view: 'three-quarter',
    title: 'Make the frames',
    instructions: (f) =>
      sentences(
        'Make one frame first and hang it in the hive. When it fits, make the others like it on a board with four stops, which holds them square.',
        `Glue and nail the ${lettered('side bars', 'side bar', f)} to the ${lettered('top bar', 'top bar', f)}${
          hasPiece(f, '/lower-') ? ` and to the ${lettered('middle bar', 'middle bar', f)}` : ''
        }, then the ${lettered('bottom bar', 'bottom bar', f)} between them.`,
        hasPiece(f, '/foundation') || hasPiece(f, '-foundation')
          ? `Slide in the ${lettered('foundation', 'foundation', f)} when the glue has set. Keep it cool and flat until then.`
          : undefined,
        hasPiece(f, '/lower-') && `Join the two halves ${JOINT_WORDS[f.design.frame.joint]}.`,
      ),
    glueUps: frameGlueUps,
    cautions: () => ['small-parts', 'wood-dust'],
    glueHours: GLUE_SET_H,
    minutesPerPart: [0.7, 1.5],
    pictured: ({ parts }) => parts.filter((p) => p.index === 0),
  },
  {
    stage: STEP.framesHung,
    unit: 'body',
    scope: 'open-hive',
    view: 'inside',
    title: 'Hang the frames',
    isDue: ({ hive }) => hive.dimensions.frameCentres.length > 0,
    worksOn: ({ hive }) => hive.parts.filter((p) => p.motion === 'frame'),
    instructions: (f) =>
      sentences(
        'Hang the frames in one after the other and push them together from one end, shoulder to shoulder.',
        f.hive.row.some((item) => item.kind === 'follower') &&
          'The follower board comes next to the last frame.',
        'Look along the row from above, and from below with the floor down: the same gap beside, under and over every frame.',
      ),
    extraMinutes: ({ hive }) => {
      const frames = hive.dimensions.frameCentres.length
      return [0.3 * frames, 1 * frames]
    },
  },
  {
    stage: STEP.covers,
    unit: 'body',
    scope: 'open-hive',
    view: 'three-quarter',
    title: 'Cover the frames',
    instructions: (f) =>
      sentences(
        hasPiece(f, 'covers/closer') &&
          `Lay a ${lettered('closing strip', 'closing strip', f)} into each gap that the top bars leave. No bee may come up there.`,
        hasPiece(f, 'covers/cloth') && `Lay the ${lettered('cloth', 'cloth', f)} over the frames.`,
        hasPiece(f, 'covers/board') &&
          `Lay the ${lettered('cover boards', 'cover board', f)} side by side onto their ledge. Each lifts off alone and lies flat without rocking.`,
      ),
  },
]
