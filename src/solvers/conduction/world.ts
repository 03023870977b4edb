/** A point or an extent along x, y and z; in a world of the conduction solver, metres. */
export type Triple = readonly [number, number, number]

/** Room for six things, one for each direction across a face: -x, +x, -y, +y, -z, +z. */
export type Six<T> = readonly [T, T, T, T, T, T]

/** Matter that conducts alike in all directions. */
export interface SolidBlock {
  readonly kind: 'solid'
  readonly minM: Triple
  readonly maxM: Triple
  /** W/(m·K), above 0. */
  readonly conductivityWPerMK: number
}

/** Air that belongs to an environment: it does not conduct, it is as warm as the environment says. */
export interface AirBlock {
  readonly kind: 'air'
  readonly minM: Triple
  readonly maxM: Triple
  /** Index into `World.environments`. */
  readonly environment: number
}

export type Block = SolidBlock | AirBlock

/** A body of air with a known temperature, and how it touches surfaces. */
export interface Environment {
  /** Of the air at y = 0; may as well be a share of a temperature difference. */
  readonly temperatureC: number
  /** How fast the air gets warmer upwards, along y; 0 if left out. */
  readonly riseKPerM?: number
  /**
   * Surface resistance, m²K/W, by the way the surface faces: the direction from the matter into the
   * air. 0 holds the surface at the air's temperature.
   */
  readonly surfaceResistanceM2KPerW: Six<number>
}

/** What touches a face: an environment by its index, or nothing that takes heat. */
export type Contact = number | 'adiabatic'

/** Blocks of matter and air. Where blocks overlap, the later one holds. */
export interface World {
  readonly blocks: readonly Block[]
  readonly environments: readonly Environment[]
  /** What fills the box around all blocks where no block is. */
  readonly background: Contact
  /** What lies beyond the six sides of the box around all blocks. */
  readonly beyond: Six<Contact>
}

/** How finely the space between two neighbouring planes of block faces is divided. */
export interface MeshSpec {
  /** Cells next to a plane are at most this wide, m. */
  readonly leastCellM: number
  /** Each next cell away from the planes may be wider by this factor; 1 keeps all cells alike. */
  readonly growth: number
  /** No cell is wider, m. */
  readonly greatestCellM: number
  /** Even the thinnest layer gets this many cells. */
  readonly cellsPerGap: number
  /** Planes closer together than this are taken as one, m. */
  readonly mergeM: number
}
