import type { Design } from '../design/schema.ts'

/** What is cut from what, and who the builder is, moves no heat. */
const COLD_GROUPS: readonly string[] = ['title', 'shop', 'stock', 'made', 'keeper']

/** True when two designs differ in nothing that heat feels. */
export const isSameHeat = (a: Design, b: Design): boolean => {
  if (a === b) return true
  const groups = Object.keys(a) as (keyof Design)[]
  return groups.every(
    (group) =>
      COLD_GROUPS.includes(group) ||
      a[group] === b[group] ||
      JSON.stringify(a[group]) === JSON.stringify(b[group]),
  )
}
