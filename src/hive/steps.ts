/** The order of assembly: what must stand before the next goes on. */
export const STEP = {
  wallRails: 1,
  wallLining: 2,
  wallInsulation: 3,
  wallCladding: 4,
  ring: 5,
  stand: 6,
  floor: 7,
  openings: 8,
  lid: 9,
  rim: 10,
  roof: 11,
  hardware: 12,
  boards: 13,
  frames: 14,
  covers: 15,
} as const
