let answer: boolean | undefined

/** True when this browser can make a WebGL 2 context. Tried once, on a canvas that is thrown away. */
export const hasWebgl = (): boolean => {
  answer ??= tryWebgl()
  return answer
}

const tryWebgl = (): boolean => {
  try {
    const context = document.createElement('canvas').getContext('webgl2')
    // Browsers allow few contexts at once, so this one is given back.
    context?.getExtension('WEBGL_lose_context')?.loseContext()
    return context !== null
  } catch {
    return false
  }
}
