/** Least distances of a fastener, mm. Along and across are meant of the grain. */
export interface FastenerDistances {
  /** Between fasteners, along the grain: a1. */
  readonly alongMm: number
  /** Between rows, across the grain: a2. */
  readonly acrossMm: number
  /** To an end that the load pulls towards, and to one that it does not: a3,t and a3,c. */
  readonly loadedEndMm: number
  readonly endMm: number
  /** To an edge that the load pushes towards, and to one that it does not: a4,t and a4,c. */
  readonly loadedEdgeMm: number
  readonly edgeMm: number
}

/**
 * Spacing, end and edge distances for nails and screws under 5 mm in timber of normal density, in the
 * form of EN 1995-1-1 Table 8.2 as the LVL Handbook restates it (proofer.faktor.fi/epaper/LVLHandbook_2025,
 * p. 149); predrilled values from memory. `loadToGrainDeg` is the angle between load and grain: 0 gives
 * the largest distance along the grain, 90 the largest to an edge.
 */
export const fastenerDistances = (
  diameterMm: number,
  { predrilled, loadToGrainDeg = 0 }: { predrilled: boolean; loadToGrainDeg?: number },
): FastenerDistances => {
  const angle = (loadToGrainDeg * Math.PI) / 180
  const [along, across] = [Math.abs(Math.cos(angle)), Math.abs(Math.sin(angle))]
  const d = diameterMm
  return predrilled
    ? {
        alongMm: (4 + along) * d,
        acrossMm: (3 + across) * d,
        loadedEndMm: (7 + 5 * along) * d,
        endMm: 7 * d,
        loadedEdgeMm: (3 + 2 * across) * d,
        edgeMm: 3 * d,
      }
    : {
        alongMm: (5 + 5 * along) * d,
        acrossMm: 5 * d,
        loadedEndMm: (10 + 5 * along) * d,
        endMm: 10 * d,
        loadedEdgeMm: (5 + 2 * across) * d,
        edgeMm: 5 * d,
      }
}

export const DISTANCE_SOURCE =
  'EN 1995-1-1 Table 8.2, restated in the LVL Handbook p. 149; predrilled values from memory'

/**
 * Least length in the part that holds the point, in diameters. Nails 8 d: EN 1995-1-1 8.3.1.2, restated
 * at eurocode.us/structural-timber-design. Screws 6 d: EN 1995-1-1 8.7.2, from memory.
 */
export const LEAST_PENETRATION_D = { screw: 6, nail: 8 } as const

/** More than this gains nothing sideways, in diameters: full value from 10 d (NDS, from memory). */
export const FULL_PENETRATION_D = 10

/** With this a screw needs no given ratio to the part under its head (older NDS, from memory). */
export const SCREW_FULL_D = 7

/**
 * Least length over the thickness of the part under the head. Nails 3: US Navy manual, restated at
 * enginemechanics.tpub.com/14119. Screws 2.5: shop rule, from memory.
 */
export const LEAST_LENGTH_RATIO = { screw: 2.5, nail: 3 } as const

/**
 * Wood left behind every point, mm. That a point must not come out: TM 55-607, restated at
 * constructionloader.tpub.com; the 3 mm are this program's choice, for bees and hands.
 */
export const POINT_COVER_MM = 3

export const LENGTH_SOURCE =
  'Penetration by EN 1995-1-1 8.3 and 8.7 (screws from memory); 2.5 to 3 times the held part: US Navy manual'

/** The end-grain rule in words: fasteners there must not be pulled (NDS, from memory). */
export const END_GRAIN_RULE =
  'Into end grain: glue and screws hold it sideways only, never against pulling; the sheets over it tie it'

/**
 * Distances where fasteners only clamp a glued joint, or hold a board that carries nothing but itself,
 * both parts drilled to size: 3 d to an end and 2 d to an edge, spacing as predrilled. Project choice,
 * after joiners' practice of screwing frame corners near their ends.
 */
export const clampDistances = (diameterMm: number): FastenerDistances => ({
  ...fastenerDistances(diameterMm, { predrilled: true }),
  endMm: 3 * diameterMm,
  edgeMm: 2 * diameterMm,
})
