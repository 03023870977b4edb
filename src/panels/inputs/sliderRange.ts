import type { NumberField } from '../../design/field.ts'

/**
 * The range that a slider spans: the field's own, unless a narrower one makes it useful. Values that
 * are typed outside it stretch it, so that the slider never lies.
 */
export const sliderRange = (
  path: string,
  field: NumberField,
  value: number,
): readonly [number, number] => {
  const name = path.replace(/\.\d+(?=\.)/g, '')
  const [low, high] = NARROWER[name] ?? [field.min, field.max]
  return [Math.min(low, value), Math.max(high, value)]
}

/** Where most hives lie, for fields whose whole range is much wider. */
const NARROWER: Readonly<Record<string, readonly [number, number]>> = {
  'cavity.frames': [4, 48],
  'cavity.emptyPlaces': [0, 30],
  'cavity.followerAAfterFrame': [0, 48],
  'cavity.followerBAfterFrame': [0, 48],
  'cavity.dividerAfterFrame': [1, 47],
  'cavity.coverSegments': [1, 16],
  'openings.entrances.centreMm': [20, 1500],
  'openings.vents.centreMm': [20, 1500],
  'stock.lumber.lengthMm': [300, 6000],
  'stock.lumber.count': [0, 20],
  'stock.lumber.price': [0, 60],
  'stock.lumber.defects.fromMm': [0, 6000],
  'stock.lumber.defects.toMm': [0, 6000],
  'stock.sheets.count': [0, 20],
  'stock.sheets.price': [0, 120],
}
