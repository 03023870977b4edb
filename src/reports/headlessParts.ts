import { z } from 'zod'

/** A list of names, labels or ids. */
export const names = z.array(z.string())

export const sizeMm = { lengthMm: z.number(), widthMm: z.number(), thicknessMm: z.number() }

/** A record of numbers with these keys. */
export function numbersNamed<const K extends string>(keys: readonly K[]) {
  // The entries are made from the keys themselves, so the record has exactly these keys.
  return Object.fromEntries(keys.map((key) => [key, z.number()])) as Record<K, z.ZodNumber>
}

/** A change of the design that does something: a path and its value. */
export const change = z.strictObject({
  field: z.string().describe('Path in the design: `cavity.endBarSpaceMm`.'),
  value: z.union([z.number(), z.string(), z.boolean()]),
})
