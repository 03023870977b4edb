/**
 * Stages of building, in an order that can really be worked: nothing is fixed before what carries it,
 * nothing is closed before all is in. Some stages add no part, so no part has their number.
 */
export const STEP = {
  longWalls: 1,
  endWalls: 2,
  dryFit: 3,
  box: 4,
  ring: 5,
  wallInsulation: 6,
  /** On the walls that run through, whose ends the other walls' boards cover. */
  claddingThrough: 7,
  claddingLapped: 8,
  wallFittings: 9,
  stand: 10,
  floorPanel: 11,
  floorUnderside: 12,
  floorHung: 13,
  lidPanel: 14,
  lidRim: 15,
  lidSkin: 16,
  roofFrame: 17,
  roofSheets: 18,
  lidHung: 19,
  finish: 20,
  /** What the paint must not touch, and what lies loose inside. */
  loose: 21,
  frames: 22,
  framesHung: 23,
  covers: 24,
  lastCheck: 25,
} as const
