import { vec3 } from '../geometry/vector.ts'

/** Unit directions of the exploded view. */
export const UP = vec3(0, 1, 0)
export const DOWN = vec3(0, -1, 0)
export const LEFT = vec3(-1, 0, 0)
export const RIGHT = vec3(1, 0, 0)
export const FORWARD = vec3(0, 0, 1)
export const BACKWARD = vec3(0, 0, -1)
