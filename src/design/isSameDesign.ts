import { formatDesign } from './formatDesign.ts'
import type { Design } from './schema.ts'

/** True when both would be saved as the same file; the same object is, without a look inside. */
export function isSameDesign(a: Design, b: Design): boolean {
  return a === b || formatDesign(a) === formatDesign(b)
}
