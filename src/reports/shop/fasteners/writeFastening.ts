import {
  DISTANCE_SOURCE,
  END_GRAIN_RULE,
  LEAST_PENETRATION_D,
  LENGTH_SOURCE,
} from '../../../catalog/fastenerRules.ts'
import {
  HARD_WOOD_KG_PER_M3,
  NAIL_FINISH,
  ROOF_SCREW_FINISH,
  SCREW_FINISH,
} from '../../../catalog/fastenerSizes.ts'
import { materialById } from '../../../catalog/materials.ts'
import type { Contact } from './contact.ts'
import type { FastenerSize, Fastening } from './fastenerReport.ts'
import { type Fit, passedBy, type SizeOption, sinkDepth } from './fitSize.ts'
import { JOINT_FAMILIES } from './jointFamilies.ts'
import type { LaidRow } from './layRow.ts'

/** A fastening of one face, with the size that was chosen for it and the row of it. */
export const writeFastening = (
  { contact, tier, predrilled }: Fit,
  size: SizeOption,
  row: LaidRow,
  labels: readonly [string, string],
): Fastening => {
  const family = JOINT_FAMILIES[contact.family]
  const { layers } = contact
  const [head, last] = [layers[0], layers.at(-1)]
  const sunk = sinkDepth(contact, size)
  const penetration = size.length - passedBy(contact) + sunk
  const isHard =
    last !== undefined && materialById(last.part.material).densityKgPerM3 >= HARD_WOOD_KG_PER_M3
  const isScrew = size.row.kind === 'screw'
  return {
    joint: jointName(head?.part.name ?? '', last?.part.name ?? ''),
    step: Math.max(...layers.map(({ part }) => part.step)),
    labels,
    partIds: layers.map(({ part }) => part.id),
    fastener: sizeOf(size, family.metal),
    count: row.count,
    layers: layers.map(({ part, thickness }, i) => ({
      name: i === 0 && sunk > 0 ? `${part.name}, under a hole ${sunk} mm deep` : part.name,
      thicknessMm: round(i === 0 ? thickness - sunk : thickness),
    })),
    penetrationMm: round(penetration),
    coverMm: round((last?.thickness ?? 0) - penetration),
    spacingMm: round(row.spacing),
    edgeMm: round(finite(row.edge)),
    endMm: round(finite(row.end)),
    pilotMm: isScrew || predrilled ? (isHard ? size.row.hardPilotMm : size.row.softPilotMm) : 0,
    clearanceHoleMm: size.row.clearanceMm,
    glue: family.glue,
    rule: ruleOf(contact, isScrew),
    source: SOURCE,
    warning: warningOf(contact, {
      tier,
      row,
      penetration,
      least: LEAST_PENETRATION_D[size.row.kind] * size.diameter,
    }),
  }
}

const SOURCE = `${LENGTH_SOURCE}. ${DISTANCE_SOURCE}`

/** `Wall lining to rail`: what each is called, without its place. */
const jointName = (head: string, point: string): string => {
  const plain = (name: string) => name.split(',')[0] ?? name
  const second = plain(point)
  return `${plain(head)} to ${second.charAt(0).toLowerCase()}${second.slice(1)}`
}

const sizeOf = (
  { row, diameter, length }: SizeOption,
  metal: 'plain' | 'washer',
): FastenerSize => ({
  kind: row.kind,
  diameterMm: diameter,
  lengthMm: length,
  finish: row.kind === 'nail' ? NAIL_FINISH : metal === 'washer' ? ROOF_SCREW_FINISH : SCREW_FINISH,
})

const ruleOf = ({ family, endGrain }: Contact, isScrew: boolean): string => {
  const { rule } = JOINT_FAMILIES[family]
  const kind = family === 'butt' ? `${rule} ${isScrew ? 'screws' : 'nails'}` : rule
  return endGrain ? `${kind}. ${END_GRAIN_RULE}` : kind
}

const warningOf = (
  contact: Contact,
  found: {
    readonly tier: Fit['tier']
    readonly row: LaidRow
    readonly penetration: number
    readonly least: number
  },
): string | undefined => {
  const { tier, row, penetration, least } = found
  const said: string[] = []
  if (tier === 2 || tier === 4) {
    said.push(
      `The point holds in only ${mm(penetration)} of wood; ${mm(least)} is the rule. ${deeper(contact)}`,
    )
  }
  if (!row.isKept) {
    const isEdge = row.edge < row.edgeWanted - 1e-6
    const [has, wants] = isEdge ? [row.edge, row.edgeWanted] : [row.end, row.endWanted]
    said.push(
      `${mm(Math.max(0, finite(has)))} to the ${isEdge ? 'edge' : 'end'} is less than the ${mm(wants)} of the rule. Predrill, tighten by hand${JOINT_FAMILIES[contact.family].glue ? ', and let the glue hold' : ''}; a wider part gives room.`,
    )
  }
  return said.length === 0 ? undefined : said.join(' ')
}

/** The nearest way out of too little depth. */
const deeper = ({ family, layers }: Contact): string => {
  const last = (layers.at(-1)?.part.name.split(',')[0] ?? 'part').toLowerCase()
  switch (family) {
    case 'leaf':
      return `Make the ${last} thicker, or use machine screws with nuts let into its inner face.`
    case 'deck':
    case 'deck-end':
    case 'cover':
    case 'cover-end':
      return 'Use a thicker deck, or set the screws where firrings lie below.'
    default:
      return `A thicker ${last} gives more hold.`
  }
}

const mm = (value: number): string => `${round(value)} mm`
const finite = (value: number): number => (Number.isFinite(value) ? value : 0)
const round = (value: number): number => Math.round(value * 10) / 10
