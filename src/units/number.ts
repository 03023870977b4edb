import { type Fraction, formatFraction } from './fraction.ts'
import { type ParseFailure, refuse } from './parseFailure.ts'
import { plainText, quoteTyped } from './plainText.ts'

export interface NumberRead {
  readonly kind: 'ok'
  readonly value: number
  /** The same value before the division. */
  readonly exact: Fraction
  /** The number written back in the form it was typed, tidied: `16 1/2`, `41.8`. */
  readonly understood: string
}

export type ParsedNumber = NumberRead | ParseFailure

/** Shown in place of a value that is not a finite number. It does not parse. */
export const NO_VALUE = '–'

/**
 * Reads one number: a decimal with a point or a comma, a fraction, or a whole number and a
 * fraction (`16 1/2`, `16-1/2`, `16½`), with an optional sign. The same in every locale. Marks
 * between thousands are refused, and so is `1,234`, which two people would read in two ways.
 */
export function parseNumber(text: string): ParsedNumber {
  const plain = plainText(text)
  const read = readUnsigned(plain.replace(/^[+-] ?/, ''))
  if (read.kind === 'error' || !plain.startsWith('-') || read.value === 0) return read
  return {
    kind: 'ok',
    value: -read.value,
    exact: { numerator: -read.exact.numerator, denominator: read.exact.denominator },
    understood: `-${read.understood}`,
  }
}

/**
 * The value with exactly `decimals` digits after a point, in every locale. Rounds the decimal
 * value that is displayed for the number (1.005 to 2 places is 1.01), halves away from zero. The
 * minus is ASCII so that the text can be typed back; minus zero is `0`. Meant for sizes under 1e15;
 * a value that is not finite gives `NO_VALUE`.
 */
export function formatNumber(value: number, decimals: number): string {
  if (!Number.isFinite(value)) return NO_VALUE
  // Shift the point in the text, not by a product: 1.005 * 100 is 100.49999999999999.
  const [digits = '0', exponent = '0'] = String(Math.abs(value)).split('e')
  const shifted = Math.round(Number(`${digits}e${Number(exponent) + decimals}`))
  const size = (shifted / 10 ** decimals).toFixed(decimals)
  return value < 0 && shifted !== 0 ? `-${size}` : size
}

/** As `formatNumber`, without zeros at the end: 418, 418.5. */
export function formatTrimmed(value: number, mostDecimals: number): string {
  const text = formatNumber(value, mostDecimals)
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text
}

const FRACTION_CHARACTERS: ReadonlyMap<string, string> = new Map([
  ['½', '1/2'],
  ['⅓', '1/3'],
  ['⅔', '2/3'],
  ['¼', '1/4'],
  ['¾', '3/4'],
  ['⅕', '1/5'],
  ['⅖', '2/5'],
  ['⅗', '3/5'],
  ['⅘', '4/5'],
  ['⅙', '1/6'],
  ['⅚', '5/6'],
  ['⅛', '1/8'],
  ['⅜', '3/8'],
  ['⅝', '5/8'],
  ['⅞', '7/8'],
])

const CHARACTERS = `[${[...FRACTION_CHARACTERS.keys()].join('')}]`
const FRACTION = `(\\d+ ?/ ?\\d+|${CHARACTERS})`
const ONLY_FRACTION = new RegExp(`^${FRACTION}$`)
// A space or a hyphen must part the whole number from a fraction of digits: 1 1/4 is not 11/4.
const WHOLE_AND_FRACTION = new RegExp(`^(\\d+)[ -]${FRACTION}$`)
const WHOLE_AND_CHARACTER = new RegExp(`^(\\d+)(${CHARACTERS})$`)
const ANY_FRACTION = new RegExp(`/|${CHARACTERS}`)
const DECIMAL = /^(\d*)[.,]?(\d*)$/

function readUnsigned(text: string): ParsedNumber {
  const mixed = WHOLE_AND_FRACTION.exec(text) ?? WHOLE_AND_CHARACTER.exec(text)
  if (mixed) return readMixed(mixed[1] ?? '', mixed[2] ?? '')
  const fraction = ONLY_FRACTION.exec(text)
  if (fraction) return readMixed('', fraction[1] ?? '')
  if (/^[1-9]\d{0,2},\d{3}$/.test(text)) {
    const [point, none] = [text.replace(',', '.'), text.replace(',', '')]
    return refuse(`"${text}" can be read in two ways. Type ${point} or ${none}.`)
  }
  const decimal = DECIMAL.exec(text)
  if (decimal && /\d/.test(text)) return readDecimal(decimal[1] ?? '', decimal[2] ?? '')
  return refuse(explainRefusal(text))
}

function readMixed(wholeText: string, fractionText: string): ParsedNumber {
  const written = FRACTION_CHARACTERS.get(fractionText) ?? fractionText
  const [top = '', bottom = ''] = written.split('/').map((digits) => digits.trim())
  if (wholeText.length > 9 || top.length > 6 || bottom.length > 6) return refuse(TOO_LONG)
  const whole = Number(wholeText)
  const denominator = Number(bottom)
  if (denominator === 0) return refuse('The lower number of a fraction cannot be 0.')
  // 1 5/4 is more often a slip of the finger than two and a quarter.
  if (wholeText !== '' && Number(top) >= denominator) {
    return refuse(`After a whole number the fraction must be less than 1; ${top}/${bottom} is not.`)
  }
  const exact = { numerator: whole * denominator + Number(top), denominator }
  const value = exact.numerator / denominator
  return { kind: 'ok', value, exact, understood: formatFraction(exact) }
}

function readDecimal(whole: string, decimals: string): ParsedNumber {
  if (whole.length > 9 || decimals.length > 20) return refuse(TOO_LONG)
  const exact = { numerator: Number(whole + decimals), denominator: 10 ** decimals.length }
  const value = exact.numerator / exact.denominator
  return { kind: 'ok', value, exact, understood: formatTrimmed(value, 6) }
}

const TOO_LONG = 'That number has too many digits.'

/** Finds what is most likely wrong and says what to type. */
function explainRefusal(text: string): string {
  if (text === '') return 'Type a number.'
  const meant = withoutThousandsMarks(text)
  if (meant) return `Leave out the mark between thousands. Type ${meant} if that is what you mean.`
  const typed = quoteTyped(text)
  if (/^[\d.,]+$/.test(text)) return `${typed} has too many points or commas. Type it as 1234.5.`
  if (/^\d+(?: - ?| ?- )\S/.test(text)) {
    return `It is not clear what "-" means in ${typed}. Type a fraction as 16 1/2 or 16-1/2.`
  }
  if (/[.,]/.test(text) && ANY_FRACTION.test(text)) {
    return `Use decimals or a fraction, not both: 16.5 or 16 1/2, not ${typed}.`
  }
  return `${typed} is not a number. Type it as 418, 41.8 or 16 1/2.`
}

/** `1,234.5`, `1.234,5`, `1,234,567` and `12 000` as a plain number; undefined if not so grouped. */
function withoutThousandsMarks(text: string): string | undefined {
  const grouped = /^(\d{1,3}(?:([., ])\d{3})(?:\2\d{3})*)(?:[.,](\d+))?$/.exec(text)
  if (!grouped) return undefined
  const [, whole = '', mark = '', decimals] = grouped
  // 1.234.5 and 1,234,5 use one mark for two jobs: nobody can tell what they mean.
  if (decimals !== undefined && text.at(-decimals.length - 1) === mark) return undefined
  const digits = whole.replaceAll(mark, '')
  return decimals === undefined ? digits : `${digits}.${decimals}`
}
