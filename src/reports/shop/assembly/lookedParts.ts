import type { Part } from '../../../hive/part.ts'
import type { CutListRow } from '../shopReport.ts'

/** All parts but the frames after the first, which are all alike: there are hundreds of them. */
export interface LookedParts {
  readonly parts: readonly Part[]
  readonly partById: ReadonlyMap<string, Part>
  readonly labelById: ReadonlyMap<string, string>
}

export const indexParts = (parts: readonly Part[], cutList: readonly CutListRow[]): LookedParts => {
  const looked = parts.filter((part) => part.motion !== 'frame' || part.index === 0)
  const labelById = new Map<string, string>()
  for (const row of cutList) {
    // A row names its parts in the order of the hive, so the first frame's come first.
    const skipsRest = isOfFramesOnly(row)
    for (const id of row.partIds) {
      if (skipsRest && !id.startsWith('frame-1/')) break
      labelById.set(id, row.label)
    }
  }
  return { parts: looked, partById: new Map(looked.map((part) => [part.id, part])), labelById }
}

export const isOfFramesOnly = ({ groups }: Pick<CutListRow, 'groups'>): boolean =>
  groups.length === 1 && groups[0] === 'frames'
