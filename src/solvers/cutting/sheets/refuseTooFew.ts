import type { SheetJob, SheetRefusal } from './sheetJob.ts'
import type { SheetModel } from './sheetModel.ts'
import type { Packing } from './startPlan.ts'

/** Why counted sheets don't do, and which parts find no place on them. */
export function refuseTooFew(
  job: SheetJob,
  model: SheetModel,
  packing: Packing,
  isCertain: boolean,
): SheetRefusal {
  const left = model.classes.flatMap((part) => part.copies.slice(0, packing.missing[part.id] ?? 0))
  const parts = [...new Set(left)].sort((a, b) => a - b)
  const names = parts.map((index) => {
    const count = left.filter((each) => each === index).length
    return `${count} of ${job.parts[index]?.id}`
  })
  const opening = isCertain
    ? 'The sheets that there are do not suffice, however they are cut.'
    : 'No way was found to cut all parts from the sheets that there are.'
  return {
    kind: 'refused',
    reason: 'not-enough',
    parts,
    message: `${opening} Without a place: ${names.join(', ')}. Raise how many sheets there are, or add a size that can be bought.`,
  }
}
