import type { LumberJob, LumberRefusal, LumberStock } from './lumberJob.ts'
import { toNanometres } from './wholeUnits.ts'

/** More pieces than any workshop cuts from one section at once. */
const MOST_PIECES = 10_000
const LONGEST_MM = 1e6
const DEAREST = 1e7

/** What makes a job impossible before anything is planned, with what to do about it. */
export const checkJob = (job: LumberJob): LumberRefusal | undefined => {
  const complaint = complaintOf(job)
  if (complaint !== undefined) {
    return { kind: 'refused', reason: 'bad-input', parts: [], message: complaint }
  }
  const wanted = job.parts.flatMap(({ count }, index) => (count > 0 ? [index] : []))
  if (wanted.length === 0) return undefined
  const usable = job.stocks
    .filter(({ count }) => count !== 0)
    .map(({ lengthMm }) => toNanometres(lengthMm) - toNanometres(job.trimMm))
    .filter((length) => length > 0)
  if (usable.length === 0) {
    return {
      kind: 'refused',
      reason: 'no-stock',
      parts: wanted,
      message: 'There is no board to cut from. Add a board length, or raise how many there are.',
    }
  }
  const longest = usable.reduce((most, length) => Math.max(most, length), 0)
  const tooLong = wanted.filter((part) => toNanometres(job.parts[part]?.lengthMm ?? 0) > longest)
  if (tooLong.length === 0) return undefined
  return {
    kind: 'refused',
    reason: 'too-long',
    parts: tooLong,
    message: tooLongMessage(job, tooLong, longest / 1e6),
  }
}

const tooLongMessage = (job: LumberJob, parts: readonly number[], longestMm: number): string => {
  const names = parts.map((part) => {
    const { id = '', lengthMm = 0 } = job.parts[part] ?? {}
    return `${id} (${showMm(lengthMm)})`
  })
  const subject =
    parts.length === 1 ? `Part ${names[0]} is longer` : `Parts ${names.join(', ')} are longer`
  return `${subject} than what any board gives (${showMm(longestMm)}). Add a longer board, or join two pieces.`
}

const showMm = (lengthMm: number): string => `${Math.round(lengthMm * 100) / 100} mm`

const complaintOf = (job: LumberJob): string | undefined => {
  if (!isSize(job.kerfMm)) return 'The saw cut must be 0 mm or wider.'
  if (!isSize(job.trimMm)) return 'The trim at the ends of boards must be 0 mm or more.'
  for (const stock of job.stocks) {
    const complaint = stockComplaint(stock)
    if (complaint !== undefined) return complaint
  }
  for (const { id, lengthMm, count } of job.parts) {
    if (!isLength(lengthMm)) return `Part ${id} needs a length of more than 0 mm.`
    if (!isCount(count)) return `Part ${id} needs a whole number of pieces, 0 or more.`
  }
  const pieces = job.parts.reduce((sum, { count }) => sum + count, 0)
  return pieces > MOST_PIECES
    ? `There are ${pieces} pieces, more than the ${MOST_PIECES} that can be planned at once. Split the job.`
    : undefined
}

const stockComplaint = ({ id, lengthMm, price, count }: LumberStock): string | undefined => {
  if (!isLength(lengthMm)) return `Board ${id} needs a length of more than 0 mm.`
  if (!(price >= 0 && price <= DEAREST)) {
    return `Board ${id} needs a price of 0 or more; give 0 for what is on hand.`
  }
  if (count !== undefined && !isCount(count)) {
    return `Board ${id} needs a whole number of boards, 0 or more, or none given for any number.`
  }
  return undefined
}

const isSize = (mm: number): boolean => mm >= 0 && mm <= LONGEST_MM

const isLength = (mm: number): boolean => isSize(mm) && toNanometres(mm) > 0

const isCount = (count: number): boolean => Number.isSafeInteger(count) && count >= 0
