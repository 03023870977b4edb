import type { Part } from '../../hive/part.ts'

/** Those of the wanted ids that the hive has, in the order of its parts. */
export const presentIds = (
  parts: readonly Part[],
  wanted: readonly string[],
): readonly string[] => {
  const found: string[] = []
  for (const { id } of parts) {
    if (wanted.includes(id)) found.push(id)
    if (found.length === wanted.length) break
  }
  return found
}

/** The first frame's bars of one kind, whether it is whole or split. */
export const firstFrame = (bar: string): readonly string[] => [
  `frame-1/${bar}`,
  `frame-1/upper-${bar}`,
  `frame-1/lower-${bar}`,
]
