/** An honest range of minutes in words: `About 20 to 40 minutes.`, `About 2 to 3 1/2 hours.` */
export const timeWords = ([least, most]: readonly [number, number]): string => {
  if (most <= 0) return ''
  if (most < 100) {
    return least === most
      ? `About ${Math.round(most)} minutes.`
      : `About ${Math.round(least)} to ${Math.round(most)} minutes.`
  }
  const [a, b] = [halfHours(least), halfHours(most)]
  return a === b ? `About ${b} hours.` : `About ${a} to ${b} hours.`
}

const halfHours = (minutes: number): string => {
  const halves = Math.max(1, Math.round(minutes / 30))
  const whole = Math.floor(halves / 2)
  if (halves % 2 === 0) return String(whole)
  return whole === 0 ? '1/2' : `${whole} 1/2`
}
