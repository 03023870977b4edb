import { HARDWARE, type HardwareRow } from '../../../catalog/hardware.ts'
import type { Design } from '../../../design/schema.ts'
import type { Hive } from '../../../hive/hive.ts'
import type { HardwareItem } from './fastenerReport.ts'
import type { Members } from './members.ts'

/** Bought fittings of one hive, without the screws that hold them. */
export const hardwareList = (
  design: Design,
  hive: Hive,
  members: Members,
): readonly HardwareItem[] => {
  const { lid, frame, stand, site } = design
  const { dimensions: d } = hive
  const legs = members.named('stand', 'leg-').length
  const feet = legs > 0 ? legs : 2 * members.named('stand', 'bearer-').length
  const meshM2 = members
    .named('openings', 'mesh-')
    .reduce((sum, { part }) => sum + (part.size.length * part.size.width) / 1e6, 0)
  const items: (HardwareItem | undefined)[] = [
    ...hinges(members),
    item(HARDWARE.latch, members.named('hardware', 'floor-latch').length, 'Holds the floor up'),
    lid.stay === 'chain'
      ? item(HARDWARE.chain, 2, `Stops the lid at ${lid.openingAngleDeg} degrees`)
      : item(HARDWARE.prop, 1, `Holds the lid at ${lid.openingAngleDeg} degrees`),
    item(HARDWARE.hook, 1, 'Holds the closed lid'),
    site.exposure === 'exposed'
      ? item(HARDWARE.strap, 1, 'Against storms, since the place is open and windy')
      : undefined,
    item(
      HARDWARE.seal,
      round2((2 * (d.outerLength + d.outerWidth)) / 1000),
      'Between walls and lid',
    ),
    item(HARDWARE.mesh, round3(meshM2), 'Over the vents'),
    item(HARDWARE.bracket, legs, 'Legs to bearers'),
    stand.form === 'none' ? undefined : item(HARDWARE.foot, feet, 'Under the legs'),
    frame.form === 'split' && frame.joint === 'straps'
      ? item(HARDWARE.splitStrap, 2 * d.frameCentres.length, 'Joins the halves of each frame')
      : undefined,
  ]
  return items.filter((i) => i !== undefined)
}

/** Hinges by width; they are sold in pairs, and lid and floor share a pair where they are alike. */
const hinges = (members: Members): readonly HardwareItem[] => {
  const byWidth = new Map<number, { lid: number; floor: number }>()
  for (const { part } of members.named('hardware', 'lid-hinge', 'floor-hinge')) {
    const width = Math.round(
      Math.max(part.size.length, part.id.includes('floor') ? part.size.width : 0),
    )
    const known = byWidth.get(width) ?? { lid: 0, floor: 0 }
    byWidth.set(
      width,
      part.id.includes('lid')
        ? { ...known, lid: known.lid + 1 }
        : { ...known, floor: known.floor + 1 },
    )
  }
  return [...byWidth].map(([width, { lid, floor }]) => ({
    ...HARDWARE.hinge,
    id: `hinge-${width}`,
    name: `${HARDWARE.hinge.name}, ${width} mm`,
    count: lid + floor,
    use: [lid > 0 ? `${lid} for the lid` : '', floor > 0 ? `${floor} for the floor` : '']
      .filter((t) => t !== '')
      .join(', '),
  }))
}

const item = (row: HardwareRow, count: number, use: string): HardwareItem | undefined =>
  count > 0 ? { ...row, count, use } : undefined

const round2 = (v: number): number => Math.ceil(v * 100) / 100
const round3 = (v: number): number => Math.ceil(v * 1000) / 1000
