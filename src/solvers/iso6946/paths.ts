/** One of the materials that stand side by side in a layer. */
export interface Section {
  /** Share of the layer's face, 0 to 1. The fractions of a layer add up to 1. */
  readonly fraction: number
  /** Thickness over conductivity, m²K/W; of a tapered section, at its thin edge. */
  readonly resistanceM2KPerW: number
  /**
   * How much more a tapered section has at its thick edge, m²K/W. All tapers of an assembly fall the
   * same way. None unless told.
   */
  readonly taperM2KPerW?: number
}

/**
 * One layer, all of one thickness. Layers that name the same pattern are set out from the same edge
 * in the order of their sections: the last section of one lies over the last of the other as far as
 * they overlap, like firrings screwed down over rails. Layers with no pattern in common cross at
 * random, so their fractions multiply.
 */
export interface Layer {
  readonly sections: readonly Section[]
  readonly pattern?: string
}

/** One straight way through all layers, films not included. Fractions of all paths add up to 1. */
export type Path = Required<Section>

/**
 * All straight ways through the layers. Layers of one pattern are overlaid, patterns are crossed.
 * No layers give one empty path. Throws if a layer's fractions don't add up to 1 or a value is
 * negative.
 */
export const derivePaths = (layers: readonly Layer[]): readonly Path[] => {
  for (const layer of layers) assertSound(layer)
  return groupByPattern(layers).map(overlay).reduce(cross, [NOTHING])
}

const NOTHING: Path = { fraction: 1, resistanceM2KPerW: 0, taperM2KPerW: 0 }

/** Edges and sums closer than this are equal; a thousandth of a hair on any panel. */
const TOLERANCE = 1e-9

/** Layers that share a pattern, together; a layer without one stands alone. */
const groupByPattern = (layers: readonly Layer[]): readonly (readonly Layer[])[] => {
  const alone = layers.filter((layer) => layer.pattern === undefined).map((layer) => [layer])
  const patterns = new Set(layers.flatMap(({ pattern }) => pattern ?? []))
  return [...alone, ...[...patterns].map((p) => layers.filter((layer) => layer.pattern === p))]
}

/** Lays the layers of one pattern on one ruler from 0 to 1 and cuts it at each section's edge. */
const overlay = (layers: readonly Layer[]): readonly Path[] => {
  const edges = layers.flatMap(({ sections }) => edgesOf(sections)).sort((a, b) => a - b)
  const strips = edges.map((end, i) => ({ start: edges[i - 1] ?? 0, end }))
  return strips
    .filter(({ start, end }) => end - start > TOLERANCE)
    .map(({ start, end }) => {
      const cut = layers.map(({ sections }) => findSection(sections, (start + end) / 2))
      return { ...joinAll(cut), fraction: end - start }
    })
}

/** Where each section ends on the ruler. */
const edgesOf = (sections: readonly Section[]): readonly number[] => {
  const edges: number[] = []
  let end = 0
  for (const { fraction } of sections) {
    end += fraction
    edges.push(end)
  }
  return edges
}

const findSection = (sections: readonly Section[], at: number): Section => {
  const index = edgesOf(sections).findIndex((end) => at < end)
  // Rounding may let the last section end a hair early.
  return sections[index] ?? sections.at(-1) ?? NOTHING
}

const joinAll = (cut: readonly Section[]): Path => cut.reduce<Path>(join, NOTHING)

/** Two stretches of one path, one after the other; fractions of independent layers multiply. */
const join = (path: Path, next: Section): Path => ({
  fraction: path.fraction * next.fraction,
  resistanceM2KPerW: path.resistanceM2KPerW + next.resistanceM2KPerW,
  taperM2KPerW: path.taperM2KPerW + (next.taperM2KPerW ?? 0),
})

const cross = (paths: readonly Path[], others: readonly Path[]): readonly Path[] =>
  paths.flatMap((path) => others.map((other) => join(path, other)))

const assertSound = ({ sections }: Layer): void => {
  const total = sections.reduce((sum, { fraction }) => sum + fraction, 0)
  const isSound = sections.every(
    (s) => s.fraction >= -TOLERANCE && s.resistanceM2KPerW >= 0 && (s.taperM2KPerW ?? 0) >= 0,
  )
  if (!isSound || !(Math.abs(total - 1) <= TOLERANCE)) {
    throw new Error(`derivePaths: a layer can't be ${JSON.stringify(sections)}`)
  }
}
