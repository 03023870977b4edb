/**
 * Minutes by counts, invented for the example: somebody careful who does it for the first time, and the
 * same who is practised.
 */
const MINUTES = {
  layOut: [5, 10],
  part: [1, 2.5],
  fastener: [0.5, 1],
  square: [3, 8],
} as const

export const TIME_RULE =
  'Times are invented for the example: 5 to 10 minutes to lay out, 1 to 2.5 for each part (a piece of a frame less), half to one for each screw or nail, 3 to 8 to square a frame. Sawing and waiting are not in them.'

/** Ranges are shown in steps of this. */
const STEP_MINUTES = 5

/** The range for one step, minutes, rounded outwards to whole steps of 5. */
export const stepMinutes = (counts: {
  readonly parts: number
  readonly fasteners: number
  readonly squares: number
  readonly perPart: readonly [number, number] | undefined
  readonly extra: readonly [number, number]
}): readonly [number, number] => {
  const perPart = counts.perPart ?? MINUTES.part
  const sum = (end: 0 | 1): number =>
    (counts.parts > 0 ? MINUTES.layOut[end] : 0) +
    counts.parts * perPart[end] +
    counts.fasteners * MINUTES.fastener[end] +
    counts.squares * MINUTES.square[end] +
    counts.extra[end]
  return [
    Math.max(STEP_MINUTES, Math.floor(sum(0) / STEP_MINUTES) * STEP_MINUTES),
    Math.max(STEP_MINUTES, Math.ceil(sum(1) / STEP_MINUTES) * STEP_MINUTES),
  ]
}
