import { DEFAULT_ENTRANCE, DEFAULT_VENT } from './defaults.ts'
import { type FreePlace, findFreePlace } from './freePlace.ts'
import { ENTRANCE_FIELDS, VENT_FIELDS } from './openingFields.ts'
import {
  type Design,
  type EntranceDesign,
  MAX_ENTRANCES,
  MAX_VENTS,
  type VentDesign,
} from './schema.ts'

/**
 * Adds an entrance like the last one where a wall is free, the front first; narrower when no wall has
 * room for all of it. The same design when there are as many as may be.
 */
export function addEntrance(design: Design): Design {
  const { entrances } = design.openings
  if (entrances.length >= MAX_ENTRANCES) return design
  const model = entrances.at(-1) ?? DEFAULT_ENTRANCE
  const place = findFreePlace(design, model.widthMm, ['front', 'back', 'left', 'right'])
  return withEntrances(design, [...entrances, placeEntrance(model, place)])
}

/** Takes the entrance of that number away, counted from 0; the same design when there is none. */
export function removeEntrance(design: Design, index: number): Design {
  const { entrances } = design.openings
  return entrances[index] === undefined
    ? design
    : withEntrances(design, entrances.toSpliced(index, 1))
}

/**
 * Adds an upper vent like the last one where a wall is free, last of all below the lid's hinges; the
 * same design when there are as many as may be.
 */
export function addVent(design: Design): Design {
  const { vents } = design.openings
  if (vents.length >= MAX_VENTS) return design
  const model = vents.at(-1) ?? DEFAULT_VENT
  const { hingeSide } = design.lid
  const other = hingeSide === 'back' ? 'front' : 'back'
  const place = findFreePlace(design, model.widthMm, [other, 'left', 'right', hingeSide])
  return withVents(design, [...vents, placeVent(model, place)])
}

/** Takes the vent of that number away, counted from 0; the same design when there is none. */
export function removeVent(design: Design, index: number): Design {
  const { vents } = design.openings
  return vents[index] === undefined ? design : withVents(design, vents.toSpliced(index, 1))
}

/** The entrance at a place; its winter width never exceeds its width. */
export function placeEntrance(model: EntranceDesign, place: FreePlace): EntranceDesign {
  const widthMm = Math.max(ENTRANCE_FIELDS.widthMm.min, Math.min(model.widthMm, place.roomMm))
  const winterWidthMm = Math.min(model.winterWidthMm, widthMm)
  return { ...model, wall: place.wall, centreMm: place.centreMm, widthMm, winterWidthMm }
}

function placeVent(model: VentDesign, place: FreePlace): VentDesign {
  const widthMm = Math.max(VENT_FIELDS.widthMm.min, Math.min(model.widthMm, place.roomMm))
  return { ...model, wall: place.wall, centreMm: place.centreMm, widthMm }
}

function withEntrances(design: Design, entrances: readonly EntranceDesign[]): Design {
  return { ...design, openings: { ...design.openings, entrances } }
}

function withVents(design: Design, vents: readonly VentDesign[]): Design {
  return { ...design, openings: { ...design.openings, vents } }
}
