const FADE_MS = 900

/**
 * How fresh the colours look this long after the design has left the field behind, 1 to 0. It starts
 * so slowly that a preview which follows at once is never preceded by a flicker.
 */
export const freshAfter = (staleMs: number): number => {
  const way = Math.min(1, Math.max(0, staleMs / FADE_MS))
  return 1 - way * way * (3 - 2 * way)
}
