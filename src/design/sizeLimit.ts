/** No design is longer than this, in bytes; one with every list full takes about 200 000. */
export const MAX_DESIGN_BYTES = 1_000_000

/** What to tell a person whose file is too large to be a design. The size is shown in kB, MB or GB. */
export function sizeMessage(bytes: number): string {
  return (
    `This is ${formatBytes(bytes)} long, but a Combwright design is never longer than ` +
    `${formatBytes(MAX_DESIGN_BYTES)}. Choose a file that Combwright saved.`
  )
}

function formatBytes(bytes: number): string {
  const [divisor, unit] = bytes < 1e6 ? [1e3, 'kB'] : bytes < 1e9 ? [1e6, 'MB'] : [1e9, 'GB']
  // Two decimals, so that a size just over the limit never reads as the limit itself.
  return `${Number((Math.ceil((bytes / divisor) * 100) / 100).toFixed(2))} ${unit}`
}
