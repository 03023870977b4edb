import { choice, flag, length } from './field.ts'

const WALLS = { front: 'Front', back: 'Back', left: 'Left end', right: 'Right end' }

/** One entrance. A list of these stands in the document. */
export const ENTRANCE_FIELDS = {
  wall: choice({
    label: 'Wall',
    meaning: 'The wall that the entrance goes through.',
    options: WALLS,
    default: 'front',
  }),
  centreMm: length({
    label: 'Place along the wall',
    meaning: 'From the inside left corner (front, back) or back corner (ends) to its middle.',
    min: 20,
    max: 10000,
    default: 150,
  }),
  bottomMm: length({
    label: 'Height above the floor',
    meaning: 'From the floor to the lower edge of the entrance.',
    min: 12,
    max: 500,
    default: 15,
  }),
  widthMm: length({
    label: 'Width',
    meaning: 'The width of the slot, or of the row of holes.',
    min: 20,
    max: 600,
    default: 180,
  }),
  heightMm: length({
    label: 'Height',
    meaning: 'The height of the slot, or the diameter of the holes. Low slots keep mice out.',
    min: 5,
    max: 40,
    step: 0.5,
    default: 8,
  }),
  form: choice({
    label: 'Form',
    meaning: 'One slot, or a row of round holes.',
    options: { slot: 'Slot', holes: 'Round holes' },
    default: 'slot',
  }),
  winterWidthMm: length({
    label: 'Winter width',
    meaning: 'What a reducer leaves open in the cold season.',
    min: 10,
    max: 600,
    default: 180,
  }),
}

/** One upper vent, always behind mesh. A list of these stands in the document. */
export const VENT_FIELDS = {
  wall: ENTRANCE_FIELDS.wall,
  centreMm: ENTRANCE_FIELDS.centreMm,
  belowRestMm: length({
    label: 'Below the frame rest',
    meaning: 'From the ledge that the lugs hang on down to the upper edge of the vent.',
    min: 12,
    max: 400,
    default: 15,
  }),
  widthMm: length({
    label: 'Width',
    meaning: 'The width of the vent.',
    min: 10,
    max: 400,
    default: 60,
  }),
  heightMm: length({
    label: 'Height',
    meaning: 'The height of the vent.',
    min: 5,
    max: 40,
    default: 8,
  }),
}

export const LANDING_FIELDS = {
  landingBoards: flag({
    label: 'Landing boards',
    meaning: 'A small sloping board under each entrance.',
    default: true,
  }),
  landingDepthMm: length({
    label: 'Landing board depth',
    meaning: 'How far the landing board stands out from the wall.',
    min: 30,
    max: 150,
    default: 70,
  }),
}
