import { ORIGIN, type Vec3, vec3 } from '../geometry/vector.ts'
import type { Hive } from '../hive/hive.ts'
import type { Part, PartGroup } from '../hive/part.ts'

/** How far each group goes in its direction, mm. */
interface GroupReach {
  /** At explode 1. */
  readonly groupMm: number
  /** Added at explode 2, to clear the layers of the groups nearer the middle. */
  readonly clearMm: number
}

export interface ExplodePlan {
  readonly reachByKey: ReadonlyMap<string, GroupReach>
  /** Between one layer and the next at explode 2. */
  readonly layerMm: number
}

/** Order from the middle outwards of groups that go the same way; those at one rank go together. */
const RANK: Readonly<Record<PartGroup, number>> = {
  frames: 1,
  boards: 1,
  'front-wall': 1,
  'back-wall': 1,
  'left-wall': 1,
  'right-wall': 1,
  floor: 1,
  covers: 2,
  openings: 2,
  rim: 3,
  stand: 3,
  lid: 4,
  roof: 5,
  hardware: 6,
}

/** The way from one rank to the next, as a share of the hive's outer width. */
const GROUP_SHARE: Readonly<Record<PartGroup, number>> = {
  frames: 0.5,
  boards: 0.5,
  'front-wall': 0.55,
  'back-wall': 0.55,
  'left-wall': 0.45,
  'right-wall': 0.45,
  floor: 0.4,
  covers: 0.3,
  openings: 0.22,
  rim: 0.22,
  stand: 0.22,
  lid: 0.3,
  roof: 0.25,
  hardware: 0.12,
}

const LAYER_SHARE = 0.16

let lastHive: Hive | undefined
let last: ExplodePlan = { reachByKey: new Map(), layerMm: 0 }

/**
 * Distances that part the groups without one passing through another: groups that go the same way
 * form a chain, and each clears the ones nearer the middle. Remembered for the latest hive.
 */
export const planExplode = (hive: Hive): ExplodePlan => {
  if (hive === lastHive) return last
  lastHive = hive
  last = buildPlan(hive)
  return last
}

/** The move of `part` at `explode` (0 closed, 1 groups apart, 2 layers apart too), mm. */
export const explodeOffset = (part: Part, plan: ExplodePlan, explode: number): Vec3 => {
  if (explode <= 0) return ORIGIN
  const reach = plan.reachByKey.get(keyOf(part))
  if (reach === undefined) return ORIGIN
  const apart = Math.min(1, explode)
  const layers = Math.max(0, Math.min(1, explode - 1))
  const way =
    apart * reach.groupMm + layers * (reach.clearMm + part.explode.layer * plan.layerMm)
  const d = part.explode.direction
  return vec3(d.x * way, d.y * way, d.z * way)
}

const keyOf = (part: Part): string => `${directionKey(part.explode.direction)} ${part.group}`

const directionKey = (d: Vec3): string =>
  `${Math.round(d.x)},${Math.round(d.y)},${Math.round(d.z)}`

interface Link {
  readonly group: PartGroup
  readonly key: string
  topLayer: number
}

const buildPlan = (hive: Hive): ExplodePlan => {
  const width = hive.dimensions.outerWidth
  const layerMm = LAYER_SHARE * width
  const chains = new Map<string, Map<PartGroup, Link>>()
  for (const part of hive.parts) {
    const direction = directionKey(part.explode.direction)
    const chain = chains.get(direction) ?? new Map<PartGroup, Link>()
    chains.set(direction, chain)
    const link = chain.get(part.group) ?? { group: part.group, key: keyOf(part), topLayer: 0 }
    link.topLayer = Math.max(link.topLayer, part.explode.layer)
    chain.set(part.group, link)
  }
  const reachByKey = new Map<string, GroupReach>()
  for (const chain of chains.values()) {
    for (const { key, reach } of reachAlong([...chain.values()], { width, layerMm })) {
      reachByKey.set(key, reach)
    }
  }
  return { reachByKey, layerMm }
}

/** Walks one chain outwards, adding up the ways and the layers passed. */
const reachAlong = (
  links: readonly Link[],
  { width, layerMm }: { readonly width: number; readonly layerMm: number },
): readonly { readonly key: string; readonly reach: GroupReach }[] => {
  const ranks = [...new Set(links.map((l) => RANK[l.group]))].sort((a, b) => a - b)
  let groupMm = 0
  let clearMm = 0
  return ranks.flatMap((rank) => {
    const level = links.filter((l) => RANK[l.group] === rank)
    groupMm += Math.max(...level.map((l) => GROUP_SHARE[l.group])) * width
    const reach = { groupMm, clearMm }
    clearMm += Math.max(...level.map((l) => l.topLayer)) * layerMm
    return level.map((l) => ({ key: l.key, reach }))
  })
}
