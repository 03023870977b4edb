import type { Field, Quantity } from './field.ts'

/** The unit that a field is stored in, with the space before it: ` mm`, `°`, ` m²K/W`; or nothing. */
export function unitOf(field: Field): string {
  return field.kind === 'number' ? STORED_UNITS[field.quantity] : ''
}

const STORED_UNITS: Readonly<Record<Quantity, string>> = {
  length: ' mm',
  count: '',
  angle: '°',
  temperature: ' °C',
  percent: ' %',
  mass: ' kg',
  resistance: ' m²K/W',
  money: '',
}
