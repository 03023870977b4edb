import type { Design } from '../design/schema.ts'

/** True when two designs differ in nothing but what is written in the title block. */
export const isSameHeat = (a: Design, b: Design): boolean => {
  if (a === b) return true
  const groups = Object.keys(a) as (keyof Design)[]
  return groups.every(
    (group) =>
      group === 'title' ||
      a[group] === b[group] ||
      JSON.stringify(a[group]) === JSON.stringify(b[group]),
  )
}
