import type { Fastening } from './fastenerReport.ts'
import { type Fit, passedBy, type SizeOption } from './fitSize.ts'
import { layRow } from './layRow.ts'
import { writeFastening } from './writeFastening.ts'

/** A face with the size that was chosen for it; undefined when none fits. */
export interface Sized {
  readonly fit: Fit
  readonly size: SizeOption | undefined
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
export const writeRows = (
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
