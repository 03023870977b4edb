/** From an ordinary hive to the largest that a design may have. */
export const FRAME_COUNTS = [30, 60, 120, 200] as const
