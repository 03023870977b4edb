import { addFractions, type Fraction } from './fraction.ts'
import { type NumberRead, parseNumber } from './number.ts'
import { type ParseFailure, refuse } from './parseFailure.ts'
import { plainText, quoteTyped } from './plainText.ts'

/** The units that one kind of field accepts. `Unit` is both key and the way a unit is written. */
export interface UnitSet<Unit extends string> {
  /** What the field holds, for messages: `a length`. */
  readonly noun: string
  /** What to type instead, for messages: `418 mm or 16 1/2 in`. */
  readonly example: string
  /** Every accepted suffix, in lower case and without a full stop. */
  readonly unitBySuffix: ReadonlyMap<string, Unit>
  /** The one pair that may stand together, as 1 ft 4 in. */
  readonly pair?: { readonly major: Unit; readonly minor: Unit; readonly minorsPerMajor: number }
}

export interface QuantityRead<Unit extends string> {
  readonly kind: 'ok'
  /** In `unit`; a pair is summed in its minor unit. */
  readonly amount: Fraction
  readonly unit: Unit
  /** What was typed, tidied: `-1 ft 4 1/2 in`. */
  readonly understood: string
}

export type ParsedQuantity<Unit extends string> = QuantityRead<Unit> | ParseFailure

/**
 * Reads a number with a unit, or a pair such as `1' 4 1/2"`; a bare number is in `bareUnit`. A sign
 * in front belongs to the whole quantity: -1' 4" is sixteen inches down.
 */
export function parseQuantity<Unit extends string>(
  text: string,
  bareUnit: Unit,
  set: UnitSet<Unit>,
): ParsedQuantity<Unit> {
  const plain = plainText(text)
  if (plain === '') return refuse(`Type ${set.noun}, such as ${set.example}.`)
  const terms = splitTerms(plain.replace(/^[+-] ?/, ''), bareUnit, set)
  if (terms.kind === 'error') return terms
  const total = sumTerms(terms.terms, set)
  if (total.kind === 'error' || !plain.startsWith('-') || total.amount.numerator === 0) return total
  const amount = { ...total.amount, numerator: -total.amount.numerator }
  return { ...total, amount, understood: `-${total.understood}` }
}

/** What was typed and, in brackets, the same in other units: `16 1/2 in (419.1 mm)`. */
export function explainQuantity(typed: string, others: readonly string[]): string {
  return others.length === 0 ? typed : `${typed} (${others.join(', ')})`
}

interface Term<Unit extends string> {
  readonly number: NumberRead
  readonly unit: Unit
}

type SplitTerms<Unit extends string> =
  | { readonly kind: 'ok'; readonly terms: readonly Term<Unit>[] }
  | ParseFailure

// A number is everything up to a letter or a foot or inch mark; a unit may end in a full stop.
const TERM = /^([^a-z'"]*)([a-z]+\.?|['"])? ?/

function splitTerms<Unit extends string>(
  text: string,
  bareUnit: Unit,
  set: UnitSet<Unit>,
): SplitTerms<Unit> {
  const terms: Term<Unit>[] = []
  let rest = text
  do {
    const [whole = '', before = '', suffix = ''] = TERM.exec(rest) ?? []
    rest = rest.slice(whole.length)
    // Drawings write 1'-4": after a foot mark the hyphen joins, it does not take away.
    const digits = (terms.length > 0 ? before.replace(/^- ?/, '') : before).trim()
    if (digits === '' && terms.length > 0) return refuse(`Give one unit only. ${advise(set)}`)
    if (digits === '') return refuse(`Start with a number. ${advise(set)}`)
    if (/^[+-]/.test(digits))
      return refuse(`${quoteTyped(text)} has a sign too many. ${advise(set)}`)
    const number = parseNumber(digits)
    if (number.kind === 'error') return number
    const unit = suffix === '' ? unitWithout(terms, bareUnit, set) : unitOf(suffix, set)
    if (unit === undefined)
      return refuse(`${quoteTyped(suffix)} is not a unit used here. ${advise(set)}`)
    terms.push({ number, unit })
  } while (rest !== '')
  return { kind: 'ok', terms }
}

function unitOf<Unit extends string>(suffix: string, set: UnitSet<Unit>): Unit | undefined {
  return set.unitBySuffix.get(suffix.replace('.', ''))
}

/** A bare number is in the preferred unit; after feet it is inches, whatever the preference. */
function unitWithout<Unit extends string>(
  before: readonly Term<Unit>[],
  bareUnit: Unit,
  { pair }: UnitSet<Unit>,
): Unit {
  return pair && before.at(-1)?.unit === pair.major ? pair.minor : bareUnit
}

function sumTerms<Unit extends string>(
  terms: readonly Term<Unit>[],
  set: UnitSet<Unit>,
): ParsedQuantity<Unit> {
  const understood = terms.map(({ number, unit }) => `${number.understood} ${unit}`).join(' ')
  const [first, second] = terms
  if (first === undefined) return refuse(`Start with a number. ${advise(set)}`)
  if (second === undefined) {
    return { kind: 'ok', amount: first.number.exact, unit: first.unit, understood }
  }
  const { pair } = set
  if (!pair || terms.length > 2 || first.unit !== pair.major || second.unit !== pair.minor) {
    return refuse(`Give ${set.noun} in one unit. ${advise(set)}`)
  }
  // 1.5' 3" and 1' 14" are more likely slips than sizes; 1'234 is a way to write thousands.
  if (!Number.isInteger(first.number.value) || second.number.value >= pair.minorsPerMajor) {
    const limit = `less than ${pair.minorsPerMajor} ${pair.minor}`
    return refuse(`With ${pair.major} and ${pair.minor}, give whole ${pair.major} and ${limit}.`)
  }
  const majors = { numerator: first.number.value * pair.minorsPerMajor, denominator: 1 }
  const amount = addFractions(majors, second.number.exact)
  return { kind: 'ok', amount, unit: pair.minor, understood }
}

function advise<Unit extends string>({ example }: UnitSet<Unit>): string {
  return `Type it as ${example}.`
}
