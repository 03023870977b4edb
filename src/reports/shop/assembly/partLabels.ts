import { boundingBox, boxExtent } from '../../../geometry/box.ts'
import { solidBounds } from '../../../geometry/solid.ts'
import type { Axis } from '../../../geometry/vector.ts'
import type { Part } from '../../../hive/part.ts'
import type { FastenerReport } from '../fasteners/fastenerReport.ts'
import type { CutListRow } from '../shopReport.ts'
import type { PartLabel } from './assemblyReport.ts'
import type { LookedParts } from './lookedParts.ts'
import { outsideWords } from './outsideWords.ts'

/**
 * What is written on the parts of each row, in the order of the cut list. Mates are the rows that hang
 * together by a joint of the hive or by a fastening.
 */
export const partLabels = (
  { parts, labelById }: LookedParts,
  cutList: readonly CutListRow[],
  fastenings: FastenerReport['fastenings'],
): readonly PartLabel[] => {
  const byLabel = new Map<string, Places>(
    cutList.map(({ label }) => [label, { parts: [], mates: new Set() }]),
  )
  // A joint has two sides, and each part names the other.
  const join = (a: string | undefined, b: string | undefined): void => {
    if (a === undefined || b === undefined) return
    byLabel.get(a)?.mates.add(b)
    byLabel.get(b)?.mates.add(a)
  }
  for (const part of parts) {
    const label = labelById.get(part.id)
    if (label === undefined) continue
    byLabel.get(label)?.parts.push(part)
    for (const other of part.fixedTo) join(label, labelById.get(other))
  }
  for (const { labels } of fastenings) join(...labels)
  return cutList.map((row) => {
    const { parts: all, mates } = byLabel.get(row.label) ?? NOWHERE
    const own = oneOfEachName(all)
    return {
      label: row.label,
      name: row.name,
      count: row.count,
      up: row.bought ? 'none' : common(own.map(upOf), 'none'),
      outside: [...new Set(own.map(outsideWords))].slice(0, 2).join('; '),
      hand: row.hand,
      mates: mates.size === 0 ? [] : cutList.filter((r) => mates.has(r.label)).map((r) => r.label),
      groups: row.groups,
    }
  })
}

interface Places {
  readonly parts: Part[]
  readonly mates: Set<string>
}

const NOWHERE: Places = { parts: [], mates: new Set() }

/** Parts of one row and one name stand alike. */
const oneOfEachName = (parts: readonly Part[]): readonly Part[] =>
  parts.filter((part, i) => part.name !== parts[i - 1]?.name)

/** The one value that all share; `none` where they differ, because then none matters. */
const common = <Value>(values: readonly Value[], none: Value): Value => {
  const [first = none] = values
  return values.every((value) => value === first) ? first : none
}

/** Which side of a part is up when it stands in the hive. */
const upOf = (part: Part): PartLabel['up'] => {
  const side = sideAlong(part, 'y')
  return side === 'length' ? 'end' : side === 'width' ? 'long edge' : 'face'
}

/** Which of a part's sizes runs along an axis of the hive. */
const sideAlong = ({ solids, size, grain }: Part, axis: Axis): keyof Part['size'] => {
  if (grain === axis) return 'length'
  const mm = boxExtent(boundingBox(solids.map(solidBounds)), axis)
  const sides = grain === 'none' ? (['length', 'width', 'thickness'] as const) : ACROSS
  return sides.reduce((a, b) => (Math.abs(size[b] - mm) < Math.abs(size[a] - mm) ? b : a))
}

const ACROSS = ['width', 'thickness'] as const
