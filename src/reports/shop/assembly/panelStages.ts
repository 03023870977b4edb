import { STEP } from '../../../hive/steps.ts'
import { foamCautions } from './foamCautions.ts'
import { floorGlueUp, lidGlueUp, rimGlueUp } from './glueUps.ts'
import { largestPiece } from './largestPiece.ts'
import {
  GLUE_HANDLE_H,
  GLUE_SET_H,
  hasPiece,
  lettered,
  type StageFacts,
  type StageSpec,
  sentences,
} from './stage.ts'

const frameLines = (facts: StageFacts, skin: string): readonly string[] => [
  `On a flat bench lay out ${lettered('rails', 'rail', facts)} and ${lettered('studs', 'stud', facts)}, the outermost studs level with the ends of the rails. Glue and ${facts.fasten} them.`,
  'Measure both diagonals and push the longer one until they are equal.',
  `Glue and ${facts.fasten} the ${skin} onto the frame, edges level all round.`,
]

const oppositeOf = (side: 'front' | 'back'): 'front' | 'back' =>
  side === 'back' ? 'front' : 'back'

/** The hinged floor. */
export const FLOOR_STAGES: readonly StageSpec[] = [
  {
    stage: STEP.floorPanel,
    unit: 'floor',
    scope: 'unit',
    view: 'underneath',
    title: 'Build the floor and insulate it',
    instructions: (f) => [
      ...frameLines(f, lettered('floor board', 'floor board', f)),
      `Turn it over and press the ${lettered('insulation', 'insulation', f)} into the pockets.`,
    ],
    glueUps: floorGlueUp,
    cautions: foamCautions,
    glueHours: GLUE_HANDLE_H,
  },
  {
    stage: STEP.floorUnderside,
    unit: 'floor',
    scope: 'unit',
    view: 'underneath',
    title: 'Close the floor',
    instructions: (f) => [
      'Look once more: every pocket is full.',
      `Glue and ${f.fasten} the ${lettered('underside', 'underside', f)} onto the frame, edges level all round.`,
    ],
    glueHours: GLUE_HANDLE_H,
    lift: (f) =>
      largestPiece(f, { what: 'The underside', alone: 'screw one corner, then square the rest.' }),
  },
  {
    stage: STEP.floorHung,
    unit: 'body',
    scope: 'hive',
    view: 'underneath',
    title: 'Hang the floor',
    worksOn: ({ hive }) =>
      hive.parts.filter((p) => p.step === STEP.floorPanel || p.step === STEP.floorUnderside),
    instructions: (f) => [
      f.design.stand.form === 'none'
        ? 'Turn the hive over and lay the floor on it, its long edges level with the outside of the long walls.'
        : 'Hold the floor up under the walls on stacks of blocks, its long edges level with the outside of the long walls.',
      `Screw the ${lettered('hinges', 'hinge', f)} to the ${f.design.floor.hingeSide} wall and to the edge of the floor, and the ${lettered('latches', 'latch', f)} to the ${oppositeOf(f.design.floor.hingeSide)} wall.`,
      'Open and close it a few times. Closed, it lies against the walls all round, and no bee finds a gap.',
    ],
    cautions: () => ['lid-and-floor'],
    lift: (f) => ({
      what: 'The floor',
      massKg: f.massOf([STEP.floorPanel, STEP.floorUnderside]),
      sidesMm: [f.hive.dimensions.cavityLength, f.hive.dimensions.outerWidth],
      ...(f.design.stand.form === 'none'
        ? {}
        : { held: 'The floor must be held up while its hinges are fixed.' }),
      alone: 'wedge it up on blocks until it does not move, and fix the latches first.',
    }),
  },
]

const LID_STEPS: readonly number[] = [
  STEP.lidPanel,
  STEP.lidRim,
  STEP.lidSkin,
  STEP.roofFrame,
  STEP.roofSheets,
]

/** The lid, its roof, and how it is hung. */
export const LID_STAGES: readonly StageSpec[] = [
  {
    stage: STEP.lidPanel,
    unit: 'lid',
    scope: 'unit',
    view: 'three-quarter',
    title: 'Frame and line the lid',
    instructions: (f) => [
      ...frameLines(f, lettered('lining', 'lid lining', f)),
      'Turn it over, so that the lining lies on the bench.',
    ],
    glueUps: lidGlueUp,
    glueHours: GLUE_HANDLE_H,
  },
  {
    stage: STEP.lidRim,
    unit: 'lid',
    scope: 'unit',
    view: 'three-quarter',
    title: 'Add rim, handle and insulation to the lid',
    instructions: (f) => [
      'Raise the panel on blocks, because the rim hangs lower than the lining.',
      `Screw the ${lettered('handle', 'handle', f)} to the middle of the ${oppositeOf(f.design.lid.hingeSide)} rim board, from behind, before that board goes on.`,
      `Glue and ${f.fasten} the ${lettered('rim boards', 'rim', f)} to its edges, upper edges level with the frame: the end boards first, then the long ones over their ends.`,
      `Press the ${lettered('insulation', 'insulation', f)} into the pockets.`,
    ],
    glueUps: rimGlueUp,
    cautions: foamCautions,
    glueHours: GLUE_HANDLE_H,
  },
  {
    stage: STEP.lidSkin,
    unit: 'lid',
    scope: 'unit',
    view: 'three-quarter',
    title: 'Close the lid',
    instructions: (f) => [
      'Look once more: every pocket is full.',
      `Glue and ${f.fasten} the ${lettered('top skin', 'top skin', f)} onto frame and rim${
        f.design.lid.form === 'flat' ? ', with the same overhang on all sides' : ', edges level'
      }.`,
    ],
    glueHours: GLUE_SET_H,
    lift: (f) =>
      largestPiece(f, { what: 'The top skin', alone: 'screw one corner, then square the rest.' }),
  },
  {
    stage: STEP.roofFrame,
    unit: 'lid',
    scope: 'unit',
    view: 'three-quarter',
    title: 'Add the slope of the roof',
    instructions: (f) =>
      sentences(
        `Screw the ${lettered('firrings', 'firring', f)} onto the top skin, all with the thin end towards the ${f.design.lid.fall}, the outermost level with the ends.`,
        `Screw the ${lettered('closing boards', 'closing board', f)} along the ${f.design.lid.fall} and the ${oppositeOf(f.design.lid.fall)}, their slanting edges following the slope.`,
        hasPiece(f, 'roof/insulation') &&
          `Lay the ${lettered('tapered insulation', 'tapered insulation', f)} between the firrings.`,
        'Lay a straight board across: it must touch every firring.',
      ),
    cautions: foamCautions,
    glueHours: GLUE_HANDLE_H,
  },
  {
    stage: STEP.roofSheets,
    unit: 'lid',
    scope: 'unit',
    view: 'three-quarter',
    title: (f) =>
      hasPiece(f, 'roof/deck') ? 'Add roof deck and cover sheet' : 'Add the cover sheet',
    instructions: (f) =>
      sentences(
        hasPiece(f, 'roof/deck') &&
          `${f.fasten === 'screw' ? 'Screw' : 'Nail'} the ${lettered('roof deck', 'roof deck', f)} onto the firrings, with the same overhang on all sides.`,
        `File the edges of the ${lettered('cover sheet', 'cover sheet', f)} smooth and wear gloves while you carry it.`,
        'Lay it on and fix it where water does not stand: near the edges, with sealing washers under the screw heads.',
      ),
    lift: (f) =>
      largestPiece(f, {
        what: 'The cover sheet',
        alone: 'work where there is no wind, and clamp one edge before you let go of the other.',
      }),
  },
  {
    stage: STEP.lidHung,
    unit: 'lid',
    scope: 'hive',
    view: 'three-quarter',
    title: 'Hang the lid',
    worksOn: ({ hive }) => hive.parts.filter((p) => LID_STEPS.includes(p.step)),
    instructions: (f) => [
      'Set the lid on the box. Push slips of card between rim and walls until the gap is the same all round.',
      `Screw the ${lettered('hinges', 'hinge', f)} to the hinge rail and to the rim of the lid.`,
      f.design.lid.stay === 'chain'
        ? 'Fit both chains, so that the lid stops at its full angle. Pull at it: they must hold it alone.'
        : 'Fit the latching prop, so that the lid stops at its full angle. Push at it: the prop must hold it alone.',
    ],
    cautions: () => ['lid-and-floor'],
    lift: (f) => ({
      what: 'The lid',
      massKg: f.massOf(LID_STEPS),
      sidesMm: [f.hive.dimensions.roofLength, f.hive.dimensions.roofWidth],
      alone: 'lift one edge onto the box, then the other, and slide it into its place.',
    }),
  },
]
