import { frameStandardById } from '../catalog/frameStandards.ts'
import { CAVITY_FIELDS } from './cavityFields.ts'
import { keepOpenings } from './keepOpenings.ts'
import type { CavityDesign, Design, FrameDesign } from './schema.ts'
import { seatBoards } from './seatBoards.ts'

/**
 * Starts from a published frame: its sizes and spacing replace the present ones. Form, joint and
 * middle bar stay. `custom` keeps all present sizes, so that a person can go on from any standard.
 */
export function chooseFrameStandard(design: Design, id: FrameDesign['standard']): Design {
  if (id === 'custom') return { ...design, frame: { ...design.frame, standard: id } }
  const { dimensions, spacingMm } = frameStandardById(id)
  const frame = { ...design.frame, ...dimensions, standard: id, spacingMm }
  return keepOpenings(design, { ...design, frame })
}

/**
 * Sets the number of frames, kept within its range. Followers and divider keep their share of the row;
 * entrances keep their distance from the corner (those of a second colony, from the far corner) as
 * long as they fit. Shrinking far and growing again does not restore what was squeezed: a drag should
 * apply this to the design that it began with.
 */
export function setFrameCount(design: Design, count: number): Design {
  const { min, max } = CAVITY_FIELDS.frames
  const frames = Math.min(Math.max(Math.round(count), min), max)
  if (Number.isNaN(frames) || frames === design.cavity.frames) return design
  const scaled = seatBoards(scaleRow(design.cavity, frames))
  return keepOpenings(design, { ...design, cavity: fitCovers(scaled, design.frame.spacingMm) })
}

function scaleRow(cavity: CavityDesign, frames: number): CavityDesign {
  const scale = (place: number) => Math.round((place * frames) / cavity.frames)
  return {
    ...cavity,
    frames,
    // At least as many frames hang as the smallest hive has.
    emptyPlaces: Math.min(cavity.emptyPlaces, frames - CAVITY_FIELDS.frames.min),
    followerAAfterFrame: scale(cavity.followerAAfterFrame),
    followerBAfterFrame: scale(cavity.followerBAfterFrame),
    dividerAfterFrame: scale(cavity.dividerAfterFrame),
  }
}

// Common practice: a loose cover board narrower than this is a splinter.
const LEAST_COVER_MM = 60

/** No more cover boards than the row has length for; at least one for each colony. */
function fitCovers(cavity: CavityDesign, spacingMm: number): CavityDesign {
  const most = Math.floor((cavity.frames * spacingMm) / LEAST_COVER_MM)
  const least = cavity.divider === 'fitted' ? 2 : 1
  return { ...cavity, coverSegments: Math.max(least, Math.min(cavity.coverSegments, most)) }
}
