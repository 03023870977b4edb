/** Gives way to whatever else waits for this thread, and comes back soon. */
export type Turn = () => Promise<void>

/**
 * A turn by way of a message to oneself: it lets other messages in between, and unlike a timer it
 * comes back at once, also when it is taken thousands of times.
 */
export const createTurn = (): Turn => {
  const { port1, port2 } = new MessageChannel()
  const waiting: (() => void)[] = []
  port2.onmessage = () => waiting.shift()?.()
  return () =>
    new Promise((resolve) => {
      waiting.push(resolve)
      port1.postMessage(undefined)
    })
}

/**
 * Runs long work to its end, giving way between its steps. Once the signal is aborted the work stops
 * at the next turn, and the promise is rejected with the signal's reason.
 */
export const runInTurns = async <T>(
  work: Generator<unknown, T>,
  signal: AbortSignal,
  turn: Turn,
): Promise<T> => {
  for (;;) {
    const { done, value } = work.next()
    if (done === true) return value
    await turn()
    signal.throwIfAborted()
  }
}
