import { STEP } from '../../../hive/steps.ts'
import { foamCautions } from './foamCautions.ts'
import { boxGlueUp, endWallGlueUps, longWallGlueUps } from './glueUps.ts'
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

const framePanel = (facts: StageFacts, wall: string): readonly string[] =>
  sentences(
    `Work on a flat bench. For each ${wall} lay out ${lettered('rails', 'rail', facts)} and ${lettered('studs', 'stud', facts)} as in the picture, the outermost studs level with the ends of the rails.`,
    hasPiece(facts, '/block-') &&
      `Where an opening goes through, put in the ${lettered('tunnel block', 'tunnel block', facts)}, its hole over the hole in the lining.`,
    `Glue and ${facts.fasten} the frame. Measure both diagonals and push the longer one until they are equal.`,
    `Glue the ${lettered('lining', 'lining', facts)} onto the frame, edges level all round, and ${facts.fasten} it down. It holds the frame square.`,
    'Write on each wall which one it is, which edge is up and which face is outside.',
  )

const throughWords = ({ design }: StageFacts): string =>
  design.walls.corner === 'long-through' ? 'long walls' : 'end walls'
const betweenWords = ({ design }: StageFacts): string =>
  design.walls.corner === 'long-through' ? 'end walls' : 'long walls'

const claddingLines = (facts: StageFacts): readonly string[] => {
  const hasOpening = facts.parts.some((p) => p.id.includes('/cladding') && p.operations.length > 0)
  return sentences(
    hasPiece(facts, '/landing-') &&
      `Fix each ${lettered('landing board', 'landing board', facts)} to its piece of cladding from behind: its inner upper edge level with the lower edge of the entrance, its front edge lower, so that rain runs off.`,
    facts.design.walls.claddingForm === 'boards'
      ? `Begin at the bottom, level with the lower edge of the wall, and set ${lettered('board', 'cladding', facts)} on board up to the top.`
      : `Hold the ${lettered('sheet', 'cladding', facts)} level with the lower edge of the wall.`,
    hasOpening &&
      'Put the piece with the opening over the hole in the frame and look through before you fix it.',
    `Fix it with ${facts.fasten}s into rails, studs and rest strips, never into insulation alone. No glue: boards swell and shrink.`,
  )
}

const BOX_STAGES: readonly number[] = [STEP.longWalls, STEP.endWalls]
/** Everything that hangs together before the hive is set on its stand. */
const BODY_STEPS = [
  ...BOX_STAGES,
  STEP.ring,
  STEP.wallInsulation,
  STEP.claddingThrough,
  STEP.claddingLapped,
  STEP.wallFittings,
]

const wallParts = ({ hive }: StageFacts) => hive.parts.filter((p) => BOX_STAGES.includes(p.step))

/** The walls, the box of them, what goes round it, and the stand under it. */
export const BODY_STAGES: readonly StageSpec[] = [
  {
    stage: STEP.longWalls,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: 'Frame and line the long walls',
    instructions: (f) => framePanel(f, 'long wall'),
    glueUps: longWallGlueUps,
    cautions: () => ['wood-dust'],
    glueHours: GLUE_HANDLE_H,
  },
  {
    stage: STEP.endWalls,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: 'Frame and line the end walls',
    instructions: (f) => framePanel(f, 'end wall'),
    glueUps: endWallGlueUps,
    cautions: () => ['wood-dust'],
    glueHours: GLUE_HANDLE_H,
  },
  {
    stage: STEP.dryFit,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: 'Try the box without glue',
    isDue: () => true,
    worksOn: wallParts,
    instructions: (f) => [
      `Stand the four walls together on a flat floor, the ${betweenWords(f)} between the ${throughWords(f)}, linings inside. Hold them with clamps or a strap. No glue yet.`,
      'Measure both diagonals of the inside at the top.',
      'Hang one frame in it, made or bought, and slide it from end to end. It must hang freely, with the same gap at both sides.',
      'Now is the time to plane or to shim. Then write the same number on both sides of each joint.',
    ],
    glueUps: boxGlueUp,
    extraMinutes: () => [20, 40],
  },
  {
    stage: STEP.box,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: 'Join the walls to a box',
    isDue: () => true,
    worksOn: wallParts,
    instructions: (f) => [
      `Put glue on the ends of the ${betweenWords(f)} and stand the box up on the flat floor, number to number.`,
      'Clamp it, measure the diagonals of the inside, and push the longer one until they are equal.',
      `Drive the ${f.fasten}s from the open pockets of the ${betweenWords(f)}, through their outermost studs and the linings into the outermost studs of the ${throughWords(f)}.`,
      'Wipe off glue inside. Leave the clamps on until the glue has set.',
    ],
    glueUps: boxGlueUp,
    glueHours: GLUE_SET_H,
    extraMinutes: () => [30, 60],
    lift: (f) => ({
      what: 'A long wall',
      massKg: f.massOf([STEP.longWalls]) / 2,
      sidesMm: [f.hive.dimensions.outerLength, f.hive.dimensions.restHeight],
      held: 'Four walls must stand at once while they are clamped.',
      alone: 'clamp a square block into each corner first, and join one corner after the other.',
    }),
  },
  {
    stage: STEP.ring,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: (f) =>
      hasPiece(f, 'ring/cover-') ? 'Add rest strips and cover strips' : 'Add rest strips',
    instructions: (f) =>
      sentences(
        `Glue and ${f.fasten} the ${lettered('rest strips', 'rest strip', f)} flat onto the upper rails, outer edges level: the long ones from end to end, the short ones between them.`,
        'The long ones stand back from the lining. The upper edge of the lining is the ledge that the frames hang on: try it with a frame.',
        hasPiece(f, 'ring/cover-') &&
          `Then the ${lettered('cover strips', 'cover strip', f)} on top. They stand back further and leave a ledge for the cover boards.`,
      ),
    glueHours: GLUE_HANDLE_H,
  },
  {
    stage: STEP.wallInsulation,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: 'Put the insulation into the walls',
    instructions: () => [
      'Press each piece into its pocket from outside, by its letter. It fills the pocket and does not bulge.',
      'Fill gaps with offcuts of the same insulation.',
      'Look into the box and into each opening: insulation must be nowhere in sight, or bees chew it.',
    ],
    cautions: foamCautions,
  },
  {
    stage: STEP.claddingThrough,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: (f) => `Clad the ${throughWords(f)}`,
    instructions: (f) => [
      ...claddingLines(f),
      'At both ends it is level with the frame of the wall.',
    ],
    lift: (f) =>
      f.design.walls.claddingForm === 'sheet'
        ? largestPiece(f, {
            what: 'A sheet of cladding',
            alone: 'screw a batten to the lower edge of the wall and stand the sheet on it.',
          })
        : undefined,
  },
  {
    stage: STEP.claddingLapped,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: (f) => `Clad the ${betweenWords(f)}`,
    instructions: (f) => [
      ...claddingLines(f),
      `At both ends it covers the ends of the cladding on the ${throughWords(f)}, so that no end grain looks out.`,
    ],
    lift: (f) =>
      f.design.walls.claddingForm === 'sheet'
        ? largestPiece(f, {
            what: 'A sheet of cladding',
            alone: 'screw a batten to the lower edge of the wall and stand the sheet on it.',
          })
        : undefined,
  },
  {
    stage: STEP.wallFittings,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: 'Add the hinge rail for the lid',
    instructions: (f) => [
      `Glue and ${f.fasten} the ${lettered('hinge rail', 'hinge rail', f)} along the ${f.design.lid.hingeSide} wall, level, its upper edge just below where the rim of the lid will end. Hold a rim board against the wall to mark it.`,
    ],
    glueHours: GLUE_HANDLE_H,
  },
  {
    stage: STEP.stand,
    unit: 'body',
    scope: 'hive',
    view: 'three-quarter',
    title: (f) =>
      f.design.stand.form === 'none' ? 'Put the bearers under it' : 'Build the stand and set it up',
    instructions: (f) =>
      f.design.stand.form === 'none'
        ? [
            `Turn the box over onto its upper edge. Screw the ${lettered('bearers', 'bearer', f)} under the end walls, level with the outside.`,
          ]
        : [
            f.design.stand.form === 'legs'
              ? `Build the two ends first: a ${lettered('bearer', 'bearer', f)} on two ${lettered('legs', 'leg', f)}, with an ${lettered('end brace', 'end brace', f)} between them.`
              : `Build the two ends first: a ${lettered('bearer', 'bearer', f)} on two ${lettered('splayed legs', 'leg', f)}, with a ${lettered('tie', 'tie', f)} between them.`,
            `Join them with the ${lettered('long brace', 'long brace', f)} on the side where the floor's hinges will be. Set the stand level.`,
            'Set the box on it, the outer edges of the bearers level with the outside of the end walls, and screw up through the bearers into the lower rails.',
          ],
    cautions: (f) => (f.design.stand.form === 'none' ? [] : ['treated-timber']),
    lift: (f) => ({
      what: 'The box',
      massKg: f.massOf(BODY_STEPS),
      sidesMm: [f.hive.dimensions.outerLength, f.hive.dimensions.outerWidth],
      alone:
        f.design.stand.form === 'none'
          ? 'tip it onto its long side, then over, on two old cushions.'
          : 'lift one end onto the stand, go round, and lift the other. Or clad it only when it stands there.',
    }),
  },
]
