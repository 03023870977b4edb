/**
 * CSV by RFC 4180: comma, CRLF, quotes where needed. Text that a spreadsheet would run as a formula gets
 * an apostrophe before it; numbers are given as numbers and pass as they are. No byte-order mark.
 */
export const csvText = (
  header: readonly string[],
  rows: readonly (readonly (string | CsvNumber)[])[],
): string => [header, ...rows].map((cells) => `${cells.map(cellText).join(',')}\r\n`).join('')

/** A number as it is to be written. */
export interface CsvNumber {
  readonly number: string
}

const cellText = (cell: string | CsvNumber): string =>
  typeof cell === 'string' ? quote(guard(cell)) : cell.number

/** A leading sign, even behind white space, would make a formula of a text. */
const guard = (text: string): string => (/^\s*[=+\-@]|^[\t\r\n]/.test(text) ? `'${text}` : text)

const quote = (cell: string): string =>
  /[",\r\n]|^\s|\s$/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell
