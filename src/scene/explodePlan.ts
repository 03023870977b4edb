import { ORIGIN, type Vec3, vec3 } from '../geometry/vector.ts'
import type { Hive } from '../hive/hive.ts'
import type { Part, PartGroup } from '../hive/part.ts'
import { plus, scaled } from './vectors.ts'

/** How far one level of a chain goes, mm. */
interface Reach {
  /** At explode 1. */
  readonly groupMm: number
  /** Added at explode 2, to clear the layers of the levels nearer the middle. */
  readonly clearMm: number
}

export interface ExplodePlan {
  readonly reachByKey: ReadonlyMap<string, Reach>
  /** Between one layer and the next at explode 2. */
  readonly layerMm: number
}

/** Where a group stands in the chain of those that go its way, and its distance from the last one. */
interface Level {
  readonly rank: number
  /** Share of the hive's outer width. */
  readonly share: number
}

const LEVELS: Readonly<Record<PartGroup, Level>> = {
  'front-wall': { rank: 1, share: 0.5 },
  'back-wall': { rank: 1, share: 0.5 },
  'left-wall': { rank: 1, share: 0.42 },
  'right-wall': { rank: 1, share: 0.42 },
  rim: { rank: 1, share: 0.42 },
  openings: { rank: 2, share: 0.06 },
  hardware: { rank: 3, share: 0.04 },
  frames: { rank: 1, share: 0.42 },
  boards: { rank: 1, share: 0.42 },
  covers: { rank: 2, share: 0.24 },
  lid: { rank: 3, share: 0.34 },
  roof: { rank: 4, share: 0.26 },
  floor: { rank: 1, share: 0.3 },
  stand: { rank: 2, share: 0.22 },
}

const LAYER_SHARE = 0.14

let lastHive: Hive | undefined
let last: ExplodePlan = { reachByKey: new Map(), layerMm: 0 }

/**
 * Distances that part the groups without one passing through another: what goes the same way forms
 * a chain, and each level clears the levels nearer the middle. Remembered for the latest hive.
 */
export const planExplode = (hive: Hive): ExplodePlan => {
  if (hive === lastHive) return last
  lastHive = hive
  last = buildPlan(hive)
  return last
}

/**
 * The move of `part` at `explode` (0 closed, 1 groups apart, 2 layers apart too), mm. A group goes
 * as one, lid and floor with all that is on them; then each part goes its own way by its layer.
 */
export const explodeOffset = (part: Part, plan: ExplodePlan, explode: number): Vec3 => {
  if (explode <= 0) return ORIGIN
  const way = groupWay(part)
  const reach = plan.reachByKey.get(way.key)
  if (reach === undefined) return ORIGIN
  const apart = Math.min(1, explode)
  const layers = Math.max(0, Math.min(1, explode - 1))
  return plus(
    scaled(way.direction, apart * reach.groupMm + layers * reach.clearMm),
    scaled(part.explode.direction, layers * part.explode.layer * plan.layerMm),
  )
}

const UP = vec3(0, 1, 0)
const DOWN = vec3(0, -1, 0)

/** The way a part's group goes, and the chain and level it belongs to. */
const groupWay = (
  part: Part,
): {
  readonly key: string
  readonly chain: string
  readonly level: Level
  readonly direction: Vec3
} => {
  const { direction, group } = blockOf(part)
  const chain = `${Math.round(direction.x)},${Math.round(direction.y)},${Math.round(direction.z)}`
  const level = LEVELS[group]
  return { key: `${chain} ${level.rank}`, chain, level, direction }
}

/** Hardware on the lid goes with the lid, whatever way it points. */
const blockOf = (part: Part): { readonly direction: Vec3; readonly group: PartGroup } => {
  if (part.motion === 'lid') {
    return { direction: UP, group: part.group === 'roof' ? 'roof' : 'lid' }
  }
  if (part.motion === 'floor') return { direction: DOWN, group: 'floor' }
  return { direction: part.explode.direction, group: part.group }
}

interface Link {
  readonly key: string
  readonly rank: number
  readonly isUpright: boolean
  share: number
  topLayer: number
}

const buildPlan = (hive: Hive): ExplodePlan => {
  const width = hive.dimensions.outerWidth
  const layerMm = LAYER_SHARE * width
  const chains = new Map<string, Map<string, Link>>()
  for (const part of hive.parts) {
    const { key, chain: name, level, direction } = groupWay(part)
    const chain = chains.get(name) ?? new Map<string, Link>()
    chains.set(name, chain)
    const link = chain.get(key) ?? {
      key,
      rank: level.rank,
      isUpright: direction.y !== 0,
      share: 0,
      topLayer: 0,
    }
    chain.set(key, link)
    link.share = Math.max(link.share, level.share)
    const along = scaledLayer(part, direction)
    link.topLayer = Math.max(link.topLayer, along)
  }
  const reachByKey = new Map<string, Reach>()
  for (const chain of chains.values()) {
    let groupMm = 0
    let clearMm = 0
    for (const link of [...chain.values()].sort((a, b) => a.rank - b.rank)) {
      groupMm += link.share * width
      reachByKey.set(link.key, { groupMm, clearMm })
      // Outward of a wall, layers count on from the wall's own; up and down each group starts anew.
      if (link.isUpright) clearMm += link.topLayer * layerMm
    }
  }
  return { reachByKey, layerMm }
}

/** Layers that a part goes along its group's way: none when it goes sideways. */
const scaledLayer = (part: Part, way: Vec3): number => {
  const d = part.explode.direction
  return part.explode.layer * Math.max(0, d.x * way.x + d.y * way.y + d.z * way.z)
}
