/** The three axes: x along the hive, y up, z across it towards the keeper. */
export type Axis = 'x' | 'y' | 'z'

/** A place or a direction. Millimetres unless the name says otherwise. */
export interface Vec3 {
  readonly x: number
  readonly y: number
  readonly z: number
}

export const vec3 = (x: number, y: number, z: number): Vec3 => ({ x, y, z })
export const ORIGIN: Vec3 = vec3(0, 0, 0)
