import { findPlace } from './findPlace.ts'
import type { PackedSheet } from './packedSheet.ts'
import { placePart } from './placePart.ts'
import type { PlaceSearch } from './placeSearch.ts'
import type { PartClass } from './sheetModel.ts'

/** How many copies of each class are not yet placed. */
export type Missing = number[]

/**
 * Places missing parts into the sheets, class by class in this order, each where it leaves the best
 * left-overs. Changes both arrays in place.
 */
export function fillSheets(
  search: PlaceSearch,
  sheets: PackedSheet[],
  missing: Missing,
  order: readonly PartClass[],
): void {
  for (const part of order) {
    let left = missing[part.id] ?? 0
    while (left > 0) {
      const place = findPlace(search, sheets, part)
      const sheet = place && sheets[place.sheet]
      if (!sheet) break
      sheets[place.sheet] = placePart(sheet, place, part)
      left--
    }
    missing[part.id] = left
  }
}

/** The area of all missing parts. */
export function measureMissing(classes: readonly PartClass[], missing: Missing): number {
  let area = 0
  for (const part of classes) area += part.area * (missing[part.id] ?? 0)
  return area
}
