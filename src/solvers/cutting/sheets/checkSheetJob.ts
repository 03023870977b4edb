import type { SheetJob, SheetPart, SheetRefusal } from './sheetJob.ts'

/** Why a job can't be planned, in words that say what to do; undefined when it can be tried. */
export function checkSheetJob(job: SheetJob): SheetRefusal | undefined {
  const problem = findBadNumber(job)
  if (problem)
    return { kind: 'refused', reason: 'bad-input', parts: problem.parts, message: problem.message }
  const wanted = [...job.parts.entries()].filter(([, part]) => part.count > 0)
  if (wanted.length === 0) return undefined
  const stocks = job.stocks.filter((stock) => (stock.count ?? 1) > 0)
  if (stocks.length === 0) {
    return {
      kind: 'refused',
      reason: 'no-stock',
      parts: wanted.map(([index]) => index),
      message:
        'There is no sheet to cut from. Add a sheet size to the stock, or raise how many there are.',
    }
  }
  return refuseTooLarge(job, wanted) ?? refuseUncarried(job, wanted)
}

type Wanted = readonly (readonly [number, SheetPart])[]

interface BadNumber {
  readonly parts: readonly number[]
  readonly message: string
}

function findBadNumber(job: SheetJob): BadNumber | undefined {
  if (!isAtLeastZero(job.kerfMm)) return say('The saw cut must be 0 mm or more. Correct its width.')
  if (!isAtLeastZero(job.trimMm)) return say('The edge trim must be 0 mm or more. Correct it.')
  if (job.carry && !(isPositive(job.carry.lengthMm) && isPositive(job.carry.widthMm))) {
    return say('The size to carry must be more than 0 mm both ways. Correct it, or turn it off.')
  }
  return findBadStock(job) ?? findBadPart(job)
}

function findBadStock(job: SheetJob): BadNumber | undefined {
  for (const stock of job.stocks) {
    const name = `Sheet ${stock.id}`
    if (!isPositive(stock.lengthMm) || !isPositive(stock.widthMm)) {
      return say(`${name} has no size. Give it a length and a width of more than 0 mm.`)
    }
    if (!isAtLeastZero(stock.price)) return say(`${name} has no price. Give one of 0 or more.`)
    if (stock.count !== undefined && !isCount(stock.count)) {
      return say(`How many of ${name.toLowerCase()} there are must be a whole number, 0 or more.`)
    }
    if (Math.min(stock.lengthMm, stock.widthMm) - 2 * job.trimMm <= 0) {
      return say(
        `${name} is trimmed away whole: ${show(job.trimMm)} mm off each edge of ${nameSize(stock)}. Trim less.`,
      )
    }
  }
  return undefined
}

function findBadPart(job: SheetJob): BadNumber | undefined {
  for (const [index, part] of job.parts.entries()) {
    if (!isPositive(part.lengthMm) || !isPositive(part.widthMm)) {
      return say(`Part ${part.id} has no size. Give it a length and a width.`, [index])
    }
    if (!isCount(part.count)) {
      return say(`The number of part ${part.id} must be a whole number, 0 or more.`, [index])
    }
  }
  return undefined
}

function say(message: string, parts: readonly number[] = []): BadNumber {
  return { parts, message }
}

function refuseTooLarge(job: SheetJob, wanted: Wanted): SheetRefusal | undefined {
  const stocks = job.stocks.filter((stock) => (stock.count ?? 1) > 0)
  const fits = (lengthMm: number, widthMm: number) =>
    stocks.some(
      (stock) =>
        lengthMm <= stock.lengthMm - 2 * job.trimMm + ROUNDING_MM &&
        widthMm <= stock.widthMm - 2 * job.trimMm + ROUNDING_MM,
    )
  const large = wanted.filter(
    ([, part]) =>
      !fits(part.lengthMm, part.widthMm) && !(part.mayTurn && fits(part.widthMm, part.lengthMm)),
  )
  if (large.length === 0) return undefined
  const names = large.map(([, part]) => {
    const turn =
      !part.mayTurn && fits(part.widthMm, part.lengthMm) ? ', would fit if it might be turned' : ''
    return `${part.id} (${nameSize(part)}${turn})`
  })
  const sizes = stocks.map(nameSize).join(', ')
  const trim = job.trimMm > 0 ? ` less ${show(job.trimMm)} mm at each edge` : ''
  return {
    kind: 'refused',
    reason: 'too-large',
    parts: large.map(([index]) => index),
    message: `No sheet is large enough for ${names.join(', ')}. Sheets: ${sizes}${trim}. Add a larger sheet, or make the part of two.`,
  }
}

function refuseUncarried(job: SheetJob, wanted: Wanted): SheetRefusal | undefined {
  const carry = job.carry
  if (!carry) return undefined
  const fits = (part: SheetPart) =>
    (part.lengthMm <= carry.lengthMm && part.widthMm <= carry.widthMm) ||
    (part.lengthMm <= carry.widthMm && part.widthMm <= carry.lengthMm)
  const large = wanted.filter(([, part]) => !fits(part))
  if (large.length === 0) return undefined
  const names = large.map(([, part]) => `${part.id} (${nameSize(part)})`).join(', ')
  return {
    kind: 'refused',
    reason: 'too-large',
    parts: large.map(([index]) => index),
    message: `Larger than what can be carried (${nameSize(carry)}): ${names}. Allow a larger size to carry, or have these cut where the sheet is bought.`,
  }
}

/** Below what any tape shows; the same as the rounding of whole units. */
const ROUNDING_MM = 1e-9

function nameSize(size: { readonly lengthMm: number; readonly widthMm: number }): string {
  return `${show(size.lengthMm)} × ${show(size.widthMm)} mm`
}

function show(lengthMm: number): string {
  return String(Math.round(lengthMm * 100) / 100)
}

function isPositive(value: number): boolean {
  return Number.isFinite(value) && value > 0
}

function isAtLeastZero(value: number): boolean {
  return Number.isFinite(value) && value >= 0
}

function isCount(value: number): boolean {
  return Number.isInteger(value) && value >= 0
}
