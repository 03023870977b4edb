import type { Design } from '../../../design/schema.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { CutListRow } from '../shopReport.ts'
import { adhesiveList } from './adhesiveList.ts'
import { chooseSizes } from './chooseSizes.ts'
import { claddingJoints } from './claddingJoints.ts'
import { type Contact, contactArea } from './contact.ts'
import type { FastenerReport, Fastening, LooseJoint } from './fastenerReport.ts'
import { type Fit, fitSize, passedBy, type SizeOption } from './fitSize.ts'
import { fittingJoints } from './fittingJoints.ts'
import { frameFastenings } from './frameFastenings.ts'
import { hardwareList } from './hardwareList.ts'
import { JOINT_FAMILIES } from './jointFamilies.ts'
import type { GlueJoint, Joint } from './joints.ts'
import { layRow } from './layRow.ts'
import { lidJoints } from './lidJoints.ts'
import { membersOf } from './members.ts'
import { meshFastenings } from './meshFastenings.ts'
import { panelJoints } from './panelJoints.ts'
import { planFinish } from './planFinish.ts'
import { ringJoints } from './ringJoints.ts'
import { roofJoints } from './roofJoints.ts'
import { standJoints } from './standJoints.ts'
import { writeFastening } from './writeFastening.ts'

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
  for (const { joints } of found) {
    for (const joint of joints) {
      const fit = bestFit(design, joint)
      if (!joint.isExtra || fit.tier === 0) fits.push(fit)
    }
  }
  const sized = [fits.filter(isRoof), fits.filter((f) => !isRoof(f))].flatMap(withSizes)
  // 3. Rows, equal ones together.
  const fastenings = [
    ...writeRows(sized, labelOf),
    ...meshFastenings(members, labelOf),
    ...frameFastenings(design, hive.parts, labelOf),
  ].sort((a, b) => a.step - b.step)
  const loose = sized
    .filter(({ size }) => size === undefined)
    .flatMap(({ fit }) => looseJoint(fit, labelOf))
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
const bestFit = (design: Design, { ways }: Joint): Fit => {
  let best: Fit | undefined
  for (const contact of ways) {
    const screws = fitSize(contact, 'screw')
    const nails =
      design.shop.fastening === 'nails' && mayNail(contact) ? fitSize(contact, 'nail') : undefined
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

interface Sized {
  readonly fit: Fit
  readonly size: SizeOption | undefined
}

const withSizes = (fits: readonly Fit[]): readonly Sized[] => {
  const sizes = chooseSizes(fits)
  return fits.map((fit, i) => ({ fit, size: sizes[i] }))
}

/** A row of the list as it grows. */
interface GrowingRow {
  readonly row: Fastening
  readonly fit: Fit
  readonly index: number
  readonly passed: number
  readonly isKept: boolean
  count: number
  spacing: number
  edge: number
  end: number
  readonly ids: Set<string>
}

/** Faces whose parts bear the same letters and that are fastened alike are one row of the list. */
const writeRows = (
  sized: readonly Sized[],
  labelOf: (id: string) => string,
): readonly Fastening[] => {
  const byLabels = new Map<string, GrowingRow[]>()
  for (const { fit, size } of sized) {
    const { contact, predrilled } = fit
    const [head, last] = [contact.layers[0], contact.layers.at(-1)]
    if (size === undefined || head === undefined || last === undefined) continue
    const laid = layRow(contact, size.diameter, predrilled)
    const labels = [labelOf(head.part.id), labelOf(last.part.id)] as const
    const passed = passedBy(contact)
    const key = `${labels[0]} ${labels[1]}`
    const rows = byLabels.get(key) ?? []
    if (rows.length === 0) byLabels.set(key, rows)
    const known = rows.find(
      (r) =>
        r.index === size.index &&
        r.isKept === laid.isKept &&
        r.fit.tier === fit.tier &&
        r.fit.kind === fit.kind &&
        r.fit.contact.family === contact.family &&
        Math.abs(r.passed - passed) < SAME &&
        Math.abs((r.fit.contact.layers.at(-1)?.thickness ?? 0) - last.thickness) < SAME,
    )
    if (known === undefined) {
      const row = writeFastening(fit, size, laid, labels)
      const { count, spacing, edge, end, isKept } = laid
      const ids = new Set(row.partIds)
      rows.push({ row, fit, index: size.index, passed, isKept, count, spacing, edge, end, ids })
      continue
    }
    known.count += laid.count
    known.spacing = Math.max(known.spacing, laid.spacing)
    known.edge = Math.min(known.edge, laid.edge)
    known.end = Math.min(known.end, laid.end)
    for (const { part } of contact.layers) known.ids.add(part.id)
  }
  return [...byLabels.values()].flat().map(({ row, count, spacing, edge, end, ids }) => ({
    ...row,
    count,
    spacingMm: round(spacing),
    edgeMm: round(edge),
    endMm: round(end),
    partIds: [...ids],
  }))
}

/** Thicknesses nearer than this are the same, mm. */
const SAME = 0.05

/** To a tenth of a mm; 0 where no edge or end is near. */
const round = (mm: number): number => (Number.isFinite(mm) ? Math.round(mm * 10) / 10 : 0)

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
