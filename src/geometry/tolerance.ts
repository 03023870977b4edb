/** Two faces nearer than this are the same face, mm. The one tolerance of the whole model. */
export const TOUCH_TOLERANCE = 0.001
