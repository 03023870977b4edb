import type { Design } from '../../../design/schema.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { CutListRow } from '../shopReport.ts'
import { adhesiveList } from './adhesiveList.ts'
import { chooseSizes } from './chooseSizes.ts'
import { claddingJoints } from './claddingJoints.ts'
import { type Contact, contactArea } from './contact.ts'
import type { FastenerReport, Fastening, LooseJoint } from './fastenerReport.ts'
import { createFitter, type Fit } from './fitSize.ts'
import { fittingJoints } from './fittingJoints.ts'
import { frameFastenings } from './frameFastenings.ts'
import { hardwareList } from './hardwareList.ts'
import { JOINT_FAMILIES } from './jointFamilies.ts'
import type { GlueJoint, Joint } from './joints.ts'
import { lidJoints } from './lidJoints.ts'
import { membersOf } from './members.ts'
import { meshFastenings } from './meshFastenings.ts'
import { panelJoints } from './panelJoints.ts'
import { planFinish } from './planFinish.ts'
import { ringJoints } from './ringJoints.ts'
import { roofJoints } from './roofJoints.ts'
import { standJoints } from './standJoints.ts'
import { type Sized, writeRows } from './writeRows.ts'

/**
 * How every joint of one hive is fastened and glued, and what its outside is treated with. The joints
 * come from the faces that parts share; each gets sizes that keep the rules, and of these few are
 * chosen. Linear in the parts; all frames are alike, so one is looked at.
 */
export const computeFasteners = (
  design: Design,
  hive: Hive,
  cutList: readonly CutListRow[],
): FastenerReport => {
  const members = membersOf(hive.parts)
  const labelOf = labelsOf(cutList)
  // 1. Where parts meet.
  const found = [
    panelJoints(hive, members),
    claddingJoints(members),
    ringJoints(members),
    lidJoints(members),
    roofJoints(members),
    standJoints(members),
    fittingJoints(hive, members),
  ]
  // 2. The sizes that each face takes, and few of them for all; roof screws are another article.
  const fits: Fit[] = []
  const fitSize = createFitter()
  const hasNails = design.shop.fastening === 'nails'
  for (const { joints } of found) {
    for (const joint of joints) {
      const fit = bestFit(fitSize, joint, hasNails)
      if (!joint.isExtra || fit.tier === 0) fits.push(fit)
    }
  }
  const sized = [fits.filter(isRoof), fits.filter((f) => !isRoof(f))].flatMap(withSizes)
  // 3. Rows, equal ones together.
  const frames = frameFastenings(design, hive.parts, labelOf)
  const mesh = meshFastenings(members, labelOf)
  const fastenings = [...writeRows(sized, labelOf), ...mesh.fastenings, ...frames.fastenings].sort(
    (a, b) => a.step - b.step,
  )
  const unfit = sized.flatMap(({ fit, size }) =>
    size === undefined ? looseJoint(fit, labelOf) : [],
  )
  const loose = mergeLoose([...unfit, ...mesh.loose, ...frames.loose])
  const glued = gluedOf(
    fits,
    found.flatMap((f) => f.glued),
  )
  return {
    fastenings,
    totals: totalsOf(fastenings),
    hardware: hardwareList(design, hive, members),
    adhesives: adhesiveList(hive, members, glued),
    finish: planFinish(design, members),
    drillBitsMm: drillsOf(fastenings),
    loose,
  }
}

/** Letters by part; of frames only the first one's, which stands for all. */
const labelsOf = (cutList: readonly CutListRow[]): ((id: string) => string) => {
  const labels = new Map<string, string>()
  for (const { label, partIds, groups } of cutList) {
    const isFrames = groups[0] === 'frames'
    for (const id of partIds) if (!isFrames || id.startsWith('frame-1/')) labels.set(id, label)
  }
  return (id) => labels.get(id) ?? ''
}

const isRoof = ({ contact }: Fit): boolean => JOINT_FAMILIES[contact.family].metal === 'washer'

/** The way that keeps most rules; of equal ones the first. Nails only where they do as well. */
const bestFit = (
  fitSize: ReturnType<typeof createFitter>,
  { ways }: Joint,
  hasNails: boolean,
): Fit => {
  let best: Fit | undefined
  for (const contact of ways) {
    const screws = fitSize(contact, 'screw')
    const nails = hasNails && mayNail(contact) ? fitSize(contact, 'nail') : undefined
    const fit = nails !== undefined && nails.tier <= screws.tier ? nails : screws
    if (best === undefined || fit.tier < best.tier) best = fit
    if (best.tier === 0) break
  }
  if (best === undefined) throw new Error('bestFit: a joint without a way')
  return best
}

/** What swings or is lifted works nails loose. */
const mayNail = ({ family, layers }: Contact): boolean => {
  const motion = layers[0]?.part.motion
  return JOINT_FAMILIES[family].mayNail && motion !== 'lid' && motion !== 'floor'
}

/** Where no size fits: glue alone, or nothing at all. */
const looseJoint = ({ contact }: Fit, labelOf: (id: string) => string): readonly LooseJoint[] => {
  const { glue } = JOINT_FAMILIES[contact.family]
  const [head, point] = [contact.layers[0]?.part, contact.layers.at(-1)?.part]
  if (head === undefined || point === undefined) return []
  return [
    {
      joint: `${head.name} to ${point.name.toLowerCase()}`,
      labels: [labelOf(head.id), labelOf(point.id)],
      partIds: contact.layers.map(({ part }) => part.id),
      glue,
      message: glue
        ? 'No usual screw is short enough: glue it and clamp it until it is dry.'
        : `No usual screw holds here. Make the ${point.name.toLowerCase()} thicker, or bolt it through.`,
    },
  ]
}

/** One line for all faces of the same two letters. */
const mergeLoose = (all: readonly LooseJoint[]): readonly LooseJoint[] => {
  const merged = new Map<string, LooseJoint>()
  for (const joint of all) {
    const key = `${joint.joint} ${joint.labels.join(' ')}`
    const partIds = [...(merged.get(key)?.partIds ?? []), ...joint.partIds]
    merged.set(key, { ...joint, partIds: [...new Set(partIds)] })
  }
  return [...merged.values()]
}

const withSizes = (fits: readonly Fit[]): readonly Sized[] => {
  const sizes = chooseSizes(fits)
  return fits.map((fit, i) => ({ fit, size: sizes[i] }))
}

const gluedOf = (fits: readonly Fit[], only: readonly GlueJoint[]) => {
  const ids = new Set<string>()
  let areaMm2 = 0
  for (const { contact } of fits) {
    if (!JOINT_FAMILIES[contact.family].glue) continue
    areaMm2 += contactArea(contact)
    for (const { part } of contact.layers) ids.add(part.id)
  }
  for (const joint of only) {
    areaMm2 += joint.areaMm2
    for (const part of joint.parts) ids.add(part.id)
  }
  return { areaMm2, partIds: [...ids] }
}

/** One in ten more than needed, since some get lost or snap (common practice). */
const SPARE = 0.1

const totalsOf = (fastenings: readonly Fastening[]): FastenerReport['totals'] => {
  const totals = new Map<string, { fastener: Fastening['fastener']; count: number }>()
  for (const { fastener, count } of fastenings) {
    const key = `${fastener.kind}|${fastener.diameterMm}|${fastener.lengthMm}|${fastener.finish}`
    const known = totals.get(key)
    if (known === undefined) totals.set(key, { fastener, count })
    else known.count += count
  }
  return [...totals.values()]
    .map(({ fastener, count }) => ({ fastener, count, spare: Math.ceil(count * SPARE - 1e-9) }))
    .sort(
      (a, b) =>
        ORDER[a.fastener.kind] - ORDER[b.fastener.kind] ||
        a.fastener.diameterMm - b.fastener.diameterMm ||
        a.fastener.lengthMm - b.fastener.lengthMm,
    )
}

const ORDER = { screw: 0, nail: 1, peg: 2, staple: 3 } as const

const drillsOf = (fastenings: readonly Fastening[]): readonly number[] => {
  const bits = new Set<number>()
  for (const { pilotMm, clearanceHoleMm } of fastenings) {
    if (pilotMm > 0) bits.add(pilotMm)
    if (clearanceHoleMm > 0) bits.add(clearanceHoleMm)
  }
  return [...bits].sort((a, b) => a - b)
}
