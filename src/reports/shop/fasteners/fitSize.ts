import {
  FULL_PENETRATION_D,
  LEAST_LENGTH_RATIO,
  LEAST_PENETRATION_D,
  POINT_COVER_MM,
  SCREW_FULL_D,
} from '../../../catalog/fastenerRules.ts'
import { type FastenerRow, NAILS, SCREWS } from '../../../catalog/fastenerSizes.ts'
import type { Contact, Span } from './contact.ts'
import { JOINT_FAMILIES } from './jointFamilies.ts'
import { hasRoom } from './layRow.ts'

/** One size that can be bought. */
export interface SizeOption {
  readonly row: FastenerRow
  readonly diameter: number
  readonly length: number
  /** Place among all options: the key for choosing few sizes for all joints. */
  readonly index: number
}

const optionsOf = (
  rows: readonly FastenerRow[],
  before: number,
): readonly (readonly SizeOption[])[] => {
  let index = before
  return rows.map((row) =>
    row.lengthsMm.map((length) => {
      index += 1
      return { row, diameter: row.diameterMm, length, index: index - 1 }
    }),
  )
}

const countOf = (options: readonly (readonly SizeOption[])[]): number =>
  options.reduce((sum, row) => sum + row.length, 0)

const SCREW_OPTIONS = optionsOf(SCREWS, 0)
const NAIL_OPTIONS = optionsOf(
  NAILS.filter((row) => row.use === 'hive'),
  countOf(SCREW_OPTIONS),
)

export const OPTION_COUNT = countOf(SCREW_OPTIONS) + countOf(NAIL_OPTIONS)

/**
 * The sizes that suit a face, and how well. 0: every rule is kept. 1: the glue carries the joint and
 * the length is twice the held part or more. 2: too little depth for the point. 3: too near an edge.
 * 4: both. 5: no size fits at all, and `sizes` is empty.
 */
export interface Fit {
  readonly contact: Contact
  readonly tier: 0 | 1 | 2 | 3 | 4 | 5
  readonly sizes: readonly SizeOption[]
  readonly kind: 'screw' | 'nail'
  readonly predrilled: boolean
}

/** Finds sizes for faces, remembering those of equal ones: most studs and boards are alike. */
export const createFitter = (): ((contact: Contact, kind: 'screw' | 'nail') => Fit) => {
  const known = new Map<string, Fit[]>()
  return (contact, kind) => {
    const key = contact.family + kind
    const before = known.get(key) ?? []
    if (before.length === 0) known.set(key, before)
    const same = before.find((fit) => isSameFace(fit.contact, contact))
    const fit = same === undefined ? fitSize(contact, kind) : { ...same, contact }
    if (same === undefined) before.push(fit)
    return fit
  }
}

const isSameFace = (a: Contact, b: Contact): boolean =>
  isSameSpan(a.along, b.along) &&
  isSameSpan(a.across, b.across) &&
  a.endGrain === b.endGrain &&
  a.holes.length === 0 &&
  b.holes.length === 0 &&
  hasSameLayers(a.layers, b.layers)

const hasSameLayers = (a: Contact['layers'], b: Contact['layers']): boolean => {
  if (a.length !== b.length) return false
  for (let i = 0; i < a.length; i += 1) {
    if (!isNear(a[i]?.thickness ?? 0, b[i]?.thickness ?? 0)) return false
  }
  return true
}

const isSameSpan = (a: Span, b: Span): boolean =>
  isNear(a.to - a.from, b.to - b.from) &&
  isSameMargin(a.from - a.endFrom, b.from - b.endFrom) &&
  isSameMargin(a.endTo - a.to, b.endTo - b.to) &&
  isSameMargin(a.from - a.edgeFrom, b.from - b.edgeFrom) &&
  isSameMargin(a.edgeTo - a.to, b.edgeTo - b.to)

/** Beyond the largest distance that any rule asks for, all are alike. */
const isSameMargin = (a: number, b: number): boolean => (a >= FAR && b >= FAR) || isNear(a, b)

/** Twelve times the thickest screw is 72 mm. */
const FAR = 75

/** Far below what a rule turns on, mm. */
const isNear = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6

/** Finds the best sizes for a face. Nails are predrilled only where the distances ask for it. */
const fitSize = (contact: Contact, kind: 'screw' | 'nail'): Fit => {
  const drilled = kind === 'screw' ? undefined : fitAt(contact, kind, false)
  if (drilled !== undefined && drilled.tier <= 1) return drilled
  const fit = fitAt(contact, kind, true)
  return drilled !== undefined && drilled.tier <= fit.tier ? drilled : fit
}

/** How deep a head must be sunk for a size to hold, whole mm; 0 where heads are not sunk. */
export const sinkDepth = (contact: Contact, { diameter, length }: SizeOption): number => {
  if (!JOINT_FAMILIES[contact.family].maySink) return 0
  const short = passedBy(contact) + LEAST_PENETRATION_D.screw * diameter - length
  const deepest = (contact.layers[0]?.thickness ?? 0) / 2
  return short <= 0 ? 0 : Math.min(Math.ceil(short - 1e-9), Math.floor(deepest))
}

/** What a fastener passes before the last layer, mm. */
export const passedBy = ({ layers }: Contact): number => {
  let passed = 0
  for (let i = 0; i + 1 < layers.length; i += 1) passed += layers[i]?.thickness ?? 0
  return passed
}

/** A thin last layer holds by this share of the best penetration that can be had. */
const NEAR_BEST = 0.85

const fitAt = (contact: Contact, kind: 'screw' | 'nail', predrilled: boolean): Fit => {
  const { leastDiameterMm, mostDiameterMm } = JOINT_FAMILIES[contact.family]
  const passed = passedBy(contact)
  let tier: Fit['tier'] = 5
  let sizes: SizeOption[] = []
  for (const options of kind === 'screw' ? SCREW_OPTIONS : NAIL_OPTIONS) {
    const d = options[0]?.diameter ?? 0
    if (kind === 'screw' && (d < leastDiameterMm || d > mostDiameterMm)) continue
    const isRoomy = hasRoom(contact, d, predrilled)
    for (const option of options) {
      const own = tierOf(contact, option, { kind, passed, isRoomy })
      if (own > tier || own === 5) continue
      if (own < tier) sizes = []
      tier = own
      sizes.push(option)
    }
  }
  return { contact, tier, sizes: tier === 0 ? sizes : trimmed(sizes, tier), kind, predrilled }
}

const tierOf = (
  contact: Contact,
  option: SizeOption,
  { kind, passed, isRoomy }: { kind: 'screw' | 'nail'; passed: number; isRoomy: boolean },
): Fit['tier'] => {
  const { layers, family, endGrain } = contact
  const { length, diameter: d } = option
  const sunk = sinkDepth(contact, option)
  const held = (layers[0]?.thickness ?? 0) - sunk
  const penetration = length - passed + sunk
  const deepest = (layers.at(-1)?.thickness ?? 0) - POINT_COVER_MM
  const most = Math.max(passed + FULL_PENETRATION_D * d, LEAST_LENGTH_RATIO[kind] * held + 10)
  if (penetration < d || penetration > deepest + 1e-9 || length > most) return 5
  const isDeep = penetration >= LEAST_PENETRATION_D[kind] * d - 1e-9
  const full = kind === 'screw' ? SCREW_FULL_D : FULL_PENETRATION_D
  // A sunk head leaves the held part thick; there the depth of the point is what counts.
  const isLong = sunk > 0 || length >= LENGTH_RATIO[kind] * held || penetration >= full * d
  if (isDeep && isLong) return isRoomy ? 0 : 3
  if (JOINT_FAMILIES[family].glue && !endGrain && length >= 2 * held) return isRoomy ? 1 : 3
  return isRoomy ? 2 : 4
}

/** Twice the held part is the least for screws, three times for nails. */
const LENGTH_RATIO = { screw: 2, nail: LEAST_LENGTH_RATIO.nail } as const

/** Of sizes that break a rule only those that break it least. */
const trimmed = (sizes: readonly SizeOption[], tier: number): readonly SizeOption[] => {
  if (tier === 1 || tier === 5) return sizes
  const thinnest = Math.min(...sizes.map((s) => s.diameter))
  const near = tier >= 3 ? sizes.filter((s) => s.diameter === thinnest) : sizes
  const longest = Math.max(...near.map((s) => s.length))
  return near.filter((s) => s.length >= NEAR_BEST * longest)
}
