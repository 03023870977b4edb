/** A hand-held circular saw tips over on a narrower strip, mm. Common practice. */
export const NARROW_STRIP_MM = 40
/** A board of this width is sawn from both edges on a table saw, mm: blades of 250 mm reach about 75. */
export const WIDEST_RESAW_MM = 150
/** No piece shorter than this is fed along a fence, mm. Common practice, as in the cautions. */
export const SHORTEST_RIP_MM = 300
/** Below this the hand comes near the blade, and a stick pushes instead, mm. Common practice. */
export const PUSH_STICK_MM = 150
/** A stop further from the saw moves when it is bumped, mm. Common practice. */
export const LONGEST_STOP_MM = 1200
/** What a hand plane takes off in reasonable time, mm. Common practice. */
export const HAND_PLANED_MM = 2
