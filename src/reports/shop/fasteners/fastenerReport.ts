/** One kind of fastener as a shop sells it. */
export interface FastenerSize {
  readonly kind: 'screw' | 'nail' | 'peg' | 'staple'
  readonly diameterMm: number
  readonly lengthMm: number
  /** `stainless steel, countersunk`. */
  readonly finish: string
}

/** How parts of two rows, or a part and those behind it, are fixed to each other. */
export interface Fastening {
  /** In words: `Front wall cladding to studs`. */
  readonly joint: string
  /** The assembly step in which it is made. */
  readonly step: number
  /** Label of the part that the head sits in, then of what the point is in. */
  readonly labels: readonly [string, string]
  readonly partIds: readonly string[]
  readonly fastener: FastenerSize
  readonly count: number
  /** What it passes, head first; what the point reaches last. */
  readonly layers: readonly { readonly name: string; readonly thicknessMm: number }[]
  /** In the last layer. */
  readonly penetrationMm: number
  /** What is left of the last layer behind the point: never below 3 mm towards bees. */
  readonly coverMm: number
  readonly spacingMm: number
  readonly edgeMm: number
  readonly endMm: number
  readonly pilotMm: number
  readonly clearanceHoleMm: number
  readonly glue: boolean
  readonly rule: string
  readonly source: string
  /** A rule that could not be kept, and what to do. */
  readonly warning: string | undefined
}

/** A hinge, latch, stay, handle, piece of mesh, sealing strip. */
export interface HardwareItem {
  /** Stable: the key of its price in the design. */
  readonly id: string
  readonly name: string
  readonly count: number
  readonly unit: 'each' | 'pair' | 'm' | 'm2'
  readonly use: string
  /** What to look for when buying: leaf width, screw length, load. */
  readonly detail: string
  readonly source: string
}

/** Glue, sealant or tape, for a joint and the materials in it. */
export interface AdhesiveItem {
  readonly id: string
  readonly name: string
  readonly use: string
  /** For a bead the volume, for an area the mass: what the quantity counts. */
  readonly quantity: number
  readonly unit: 'ml' | 'g' | 'm'
  readonly why: string
  readonly source: string
  readonly partIds: readonly string[]
}

/** A joint that no usual screw or nail fits. */
export interface LooseJoint {
  readonly joint: string
  readonly labels: readonly [string, string]
  readonly partIds: readonly string[]
  /** Glue alone holds it; otherwise nothing does yet. */
  readonly glue: boolean
  /** What to do. */
  readonly message: string
}

export interface FinishPlan {
  readonly id: string
  readonly name: string
  readonly areaM2: number
  readonly coats: number
  readonly litres: number
  /** Before bees move in. */
  readonly curingDays: number
  readonly advice: string
  readonly source: string
}

export interface FastenerReport {
  readonly fastenings: readonly Fastening[]
  /** Alike fasteners of all joints together, with spares. */
  readonly totals: readonly {
    readonly fastener: FastenerSize
    readonly count: number
    readonly spare: number
  }[]
  readonly hardware: readonly HardwareItem[]
  readonly adhesives: readonly AdhesiveItem[]
  readonly finish: FinishPlan | undefined
  /** Drill bits that the pilot and clearance holes need, mm, least first. */
  readonly drillBitsMm: readonly number[]
  readonly loose: readonly LooseJoint[]
}
