import { materialById } from '../../../catalog/materials.ts'
import type { Design } from '../../../design/schema.ts'
import type { Part } from '../../../hive/part.ts'
import type { Side } from './partSize.ts'

/** A thicker strip is a part of its own, mm. Common practice. */
const THICKEST_SHIM_MM = 12

/**
 * How a strip makes up for what a part is short of; undefined where it would do harm: on faces that
 * bees or rain meet, on parts that carry others' edges, and on parts that slide or are lifted.
 */
export const findShim = (
  design: Design,
  part: Part,
  side: Side,
  shortMm: number,
): string | undefined => {
  if (shortMm <= 0 || shortMm > THICKEST_SHIM_MM || side === 'thickness') return undefined
  if (materialById(part.material).family === 'insulation') {
    return 'Fill the gap with a strip of the same insulation, or with foam that stays soft.'
  }
  if (side === 'width' || !standsBetween(design, part.id)) return undefined
  return 'Glue a shim of the same wood on its end; it stands between other parts and no bee meets it.'
}

/** Parts inside the panels and the stand whose ends meet other parts' faces. */
const BETWEEN = [
  /^(front|back|left|right)-wall\/(stud|block)/,
  /^(floor|lid)\/(stud|block)/,
  /^roof\/firring/,
  /^stand\/(brace|tie)/,
]

const standsBetween = ({ walls }: Design, id: string): boolean => {
  // At the corners one pair of walls runs through and the rails and strips of the other stand between.
  const between =
    walls.corner === 'long-through' ? /^(left|right)-wall\/rail/ : /^(front|back)-wall\/rail/
  return between.test(id) || BETWEEN.some((pattern) => pattern.test(id))
}
