/** Screws and nails of one diameter as shops sell them, with the holes that they want. */
export interface FastenerRow {
  readonly kind: 'screw' | 'nail'
  readonly diameterMm: number
  /** Shortest first. */
  readonly lengthsMm: readonly number[]
  /** Hole for the thread in wood under 600 kg/m³, and in heavier wood. 0: none is usual. */
  readonly softPilotMm: number
  readonly hardPilotMm: number
  /** Hole through the part under the head, so that the screw pulls both together; 0 for nails. */
  readonly clearanceMm: number
  /** The nearest screw gauge where shops count by it; empty for nails. */
  readonly gauge: string
  readonly use: 'hive' | 'frames'
  readonly source: string
}

/** Wood at least this heavy takes the larger pilot hole, kg/m³ (common practice, from memory). */
export const HARD_WOOD_KG_PER_M3 = 600

/** Head form and metal of the screws that are reckoned with: honey and wet larch both attack zinc. */
export const SCREW_FINISH = 'stainless steel, countersunk'
export const ROOF_SCREW_FINISH = 'stainless steel, with sealing washer'
export const NAIL_FINISH = 'stainless steel, ring shank'
export const FRAME_NAIL_FINISH = 'stainless steel, plain'

const lengths = 'from memory: usual lengths of countersunk wood screws; look at your shop'
const drills = 'from memory: metric drills for 4.0 and 5.0 mm screws, the others in proportion'
const nails = 'from memory: usual sizes of nails for joinery and fencing'
const gimp = 'from memory: nails sold for hive frames, about 18 gauge'

const screw = (
  diameterMm: number,
  lengthsMm: readonly number[],
  [softPilotMm, hardPilotMm, clearanceMm]: readonly [number, number, number],
  gauge: string,
): FastenerRow => ({
  kind: 'screw',
  diameterMm,
  lengthsMm,
  softPilotMm,
  hardPilotMm,
  clearanceMm,
  gauge,
  use: 'hive',
  source: `${lengths}; ${drills}`,
})

const nail = (diameterMm: number, lengthsMm: readonly number[]): FastenerRow => ({
  kind: 'nail',
  diameterMm,
  lengthsMm,
  // At most 75 % of the nail in wood of specific gravity 0.6 or less, 90 % above (NDS, restated at
  // civilengineeringx.com/bdac/nails-and-spikes); to the drill below that.
  softPilotMm: Math.floor(0.75 * diameterMm * 2) / 2,
  hardPilotMm: Math.floor(0.9 * diameterMm * 2) / 2,
  clearanceMm: 0,
  gauge: '',
  use: 'hive',
  source: nails,
})

/** Screws, thinnest first. */
export const SCREWS: readonly FastenerRow[] = [
  screw(3, [12, 16, 20, 25, 30, 35, 40], [2, 2, 3.5], '5'),
  screw(3.5, [12, 16, 20, 25, 30, 35, 40, 50], [2, 2.5, 4], '6'),
  screw(4, [16, 20, 25, 30, 35, 40, 45, 50, 60, 70], [2.5, 3, 4.5], '8'),
  screw(4.5, [40, 50, 60, 70, 80], [2.5, 3, 5], '9'),
  screw(5, [40, 50, 60, 70, 80, 90, 100], [3, 3.5, 5.5], '10'),
  screw(6, [60, 80, 100, 120, 140, 160, 180], [4, 4.5, 6.5], '14'),
]

/** Nails, thinnest first; the last is for frames only. */
export const NAILS: readonly FastenerRow[] = [
  nail(2, [20, 25, 30, 35, 40]),
  nail(2.5, [35, 40, 45, 50]),
  nail(2.8, [45, 50, 55, 65]),
  nail(3.1, [50, 65, 70, 80]),
  {
    ...nail(1.4, [20, 25, 30, 35]),
    softPilotMm: 0,
    hardPilotMm: 1,
    use: 'frames',
    source: gimp,
  },
]

/** One gauge of wood screw, inches, with the pilot and clearance drills of published tables. */
export interface ScrewGauge {
  readonly gauge: string
  readonly shankIn: number
  readonly rootIn: number
  readonly softPilotIn: number
  readonly hardPilotIn: number
  readonly clearanceIn: number
  readonly source: string
}

const gaugeSource = 'l-36.com/woodscrewpilot.php; glenlarchive.com plate 6B for soft and clearance'

/** For those who drill in inches. Charts disagree by one drill: try it on scrap. */
export const SCREW_GAUGES: readonly ScrewGauge[] = [
  ['6', 0.138, 0.094, 1 / 16, 5 / 64, 9 / 64] as const,
  ['8', 0.164, 0.112, 5 / 64, 3 / 32, 11 / 64] as const,
  ['10', 0.19, 0.13, 3 / 32, 7 / 64, 3 / 16] as const,
  ['12', 0.216, 0.148, 7 / 64, 1 / 8, 7 / 32] as const,
].map(([gauge, shankIn, rootIn, softPilotIn, hardPilotIn, clearanceIn]) => ({
  gauge,
  shankIn,
  rootIn,
  softPilotIn,
  hardPilotIn,
  clearanceIn,
  source: gaugeSource,
}))

/** Pieces in a small pack and in a box, by kind: common practice, from memory. */
export const packQuantities = (
  kind: 'screw' | 'nail' | 'peg' | 'staple',
  diameterMm: number,
): { readonly pack: number; readonly box: number } => {
  switch (kind) {
    case 'screw':
      return { pack: 25, box: diameterMm >= 6 ? 50 : diameterMm >= 5 ? 100 : 200 }
    case 'nail':
      return { pack: 100, box: diameterMm < 2 ? 500 : 250 }
    case 'peg':
      return { pack: 50, box: 100 }
    case 'staple':
      return { pack: 1000, box: 5000 }
  }
}
