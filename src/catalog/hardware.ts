/** One kind of bought fitting and how it is counted. */
export interface HardwareRow {
  readonly id: string
  readonly name: string
  readonly unit: 'each' | 'pair' | 'm' | 'm2'
  readonly detail: string
  readonly source: string
}

const practice = 'common practice, from memory'

/** Fittings that need no more sizes than the hive gives them. */
export const HARDWARE = {
  hinge: {
    id: 'hinge',
    name: 'Butt hinge, stainless',
    unit: 'each',
    detail: 'Both leaves flat, fixed pin, three screws to a leaf.',
    source: practice,
  },
  latch: {
    id: 'toggle-latch',
    name: 'Toggle latch, stainless',
    unit: 'each',
    detail: 'Pulls the floor up against the walls; four screws.',
    source: practice,
  },
  chain: {
    id: 'lid-chain',
    name: 'Lid chain with two screw eyes, stainless',
    unit: 'each',
    detail: 'Shorten it on the hive until the lid stops where it should.',
    source: practice,
  },
  prop: {
    id: 'lid-prop',
    name: 'Latching lid prop',
    unit: 'each',
    detail: 'It must lock by shape; one that holds by friction lets go in the wind.',
    source: 'project choice: a lid needs a stop that cannot slip',
  },
  hook: {
    id: 'lid-hook',
    name: 'Hook and eye for the lid, stainless',
    unit: 'each',
    detail: 'Keeps wind from lifting the closed lid.',
    source: practice,
  },
  strap: {
    id: 'hive-strap',
    name: 'Ratchet strap round the hive',
    unit: 'each',
    detail: 'Long enough for once round hive and stand.',
    source: practice,
  },
  mesh: {
    id: 'vent-mesh',
    name: 'Steel mesh, 8 wires to the inch',
    unit: 'm2',
    detail: 'Openings under 3.2 mm; fold the cut edges over.',
    source: 'from memory: 1/8 inch hardware cloth keeps bees in and lets mites fall',
  },
  seal: {
    id: 'sealing-strip',
    name: 'Sealing strip, soft rubber, 9 mm wide',
    unit: 'm',
    detail: 'Squeezes to under 1 mm, so that bee space stays what it is.',
    source: practice,
  },
  foot: {
    id: 'foot-pad',
    name: 'Foot pad, rot-proof',
    unit: 'each',
    detail: 'A paving slab or plate, twice as wide as the leg, keeps the end grain out of the wet.',
    source: practice,
  },
  bracket: {
    id: 'leg-bracket',
    name: 'Angle bracket, galvanised, 60 × 60 × 40',
    unit: 'each',
    detail: 'Ties the leg to the bearer, since screws in end grain must not be pulled.',
    source: 'from memory: NDS allows no pull on fasteners in end grain',
  },
  splitStrap: {
    id: 'frame-strap',
    name: 'Stainless strap for a split frame',
    unit: 'each',
    detail: 'Thin enough to stay within the bee space: 0.5 mm.',
    source: practice,
  },
} as const satisfies Readonly<Record<string, HardwareRow>>
