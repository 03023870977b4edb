import type { Operation } from '../hive/part.ts'
import { formatLength, type LengthUnit } from '../units/length.ts'
import { formatTrimmed } from '../units/number.ts'

/** What is done to a part after sawing it to size, in a few words: `slot 180 × 8`. No unit is written. */
export const operationText = (operation: Operation, unit: LengthUnit): string => {
  const show = (mm: number) => formatLength(mm, unit)
  switch (operation.kind) {
    case 'slot':
      return `slot ${show(operation.width)} × ${show(operation.height)}`
    case 'holes':
      return operation.count === 1
        ? `hole Ø ${show(operation.diameter)}`
        : `${operation.count} holes Ø ${show(operation.diameter)}`
    case 'notch':
      return `${many(operation.count, 'notch', 'notches')} ${show(operation.width)} × ${show(operation.depth)} deep`
    case 'bevel':
      return `bevel ${formatTrimmed(operation.angleDeg, 1)}°`
    case 'taper':
      return `taper ${show(operation.from)} to ${show(operation.to)}`
    case 'groove':
      return `groove ${show(operation.width)} × ${show(operation.depth)} deep`
  }
}

const many = (count: number, one: string, more: string): string =>
  count === 1 ? one : `${count} ${more}`
