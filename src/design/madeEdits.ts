import { type Design, MAX_MADE, type MadeSizeDesign } from './schema.ts'

/**
 * Notes parts as cut, each with its real size; a part that is noted already takes the new size. More
 * than `MAX_MADE` parts are not kept: the first ones are. The same design when nothing changes.
 */
export function markMade(design: Design, parts: readonly MadeSizeDesign[]): Design {
  const byId = new Map(design.made.map((made) => [made.partId, made]))
  for (const part of parts) byId.set(part.partId, part)
  const made = [...byId.values()].slice(0, MAX_MADE)
  return made.length === design.made.length && made.every((m, i) => isSameSize(m, design.made[i]))
    ? design
    : { ...design, made }
}

/** Takes parts off the list of those cut; the same design when none of them is on it. */
export function unmarkMade(design: Design, partIds: readonly string[]): Design {
  const gone = new Set(partIds)
  const made = design.made.filter(({ partId }) => !gone.has(partId))
  return made.length === design.made.length ? design : { ...design, made }
}

function isSameSize(a: MadeSizeDesign, b: MadeSizeDesign | undefined): boolean {
  return (
    a.partId === b?.partId &&
    a.lengthMm === b.lengthMm &&
    a.widthMm === b.widthMm &&
    a.thicknessMm === b.thicknessMm
  )
}
