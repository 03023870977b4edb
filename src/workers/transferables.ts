/** The memory behind the typed arrays in plain data, each once, so that it can be handed over uncopied. */
export const transferables = (value: unknown): readonly ArrayBuffer[] => {
  const found = new Set<ArrayBuffer>()
  collect(value, found)
  return [...found]
}

const collect = (value: unknown, found: Set<ArrayBuffer>): void => {
  if (typeof value !== 'object' || value === null) return
  if (ArrayBuffer.isView(value)) {
    if (value.buffer instanceof ArrayBuffer) found.add(value.buffer)
    return
  }
  for (const inner of Object.values(value)) collect(inner, found)
}
