/** A JSON object as it was read: nothing is known about its values. */
export type JsonObject = Readonly<Record<string, unknown>>

/** True for `{...}`, false for lists, null and plain values. */
export function isJsonObject(value: unknown): value is JsonObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** The entry of that name that the file itself wrote; inherited names such as `constructor` are none. */
export function ownValue(json: unknown, key: PropertyKey): unknown {
  if (typeof json !== 'object' || json === null) return undefined
  return Object.getOwnPropertyDescriptor(json, key)?.value
}
