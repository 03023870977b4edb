import type { Fastening } from '../../../reports/shop/fasteners/fastenerReport.ts'

/** The drawing is this large; the layers share its width. */
const WIDTH = 150
const HEIGHT = 34
/** So many lengths of the fastener are drawn at most. */
const MOST_BEHIND = 1.35

/** The layers that a fastener passes, head at the left, to scale, with the fastener in them. */
export const LayerStack = ({ fastening }: { readonly fastening: Fastening }) => {
  const { layers, fastener } = fastening
  const sumMm = layers.reduce((sum, { thicknessMm }) => sum + thicknessMm, 0)
  // A post that goes on for long behind the point is drawn broken off.
  const wholeMm = Math.max(Math.min(sumMm, fastener.lengthMm * MOST_BEHIND), fastener.lengthMm, 1)
  const scale = (WIDTH - 8) / wholeMm
  let at = 4
  const boxes = layers.map(({ name, thicknessMm }) => {
    const width = Math.min(thicknessMm * scale, WIDTH - 4 - at)
    const box = { name, x: at, width }
    at += box.width
    return box
  })
  const tip = 4 + fastener.lengthMm * scale
  const y = HEIGHT / 2
  return (
    <svg
      className="layer-stack"
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      width={WIDTH}
      height={HEIGHT}
      aria-hidden="true"
    >
      {boxes.map(({ name, x, width }, i) => (
        <rect
          key={`${x} ${name}`}
          className={i === boxes.length - 1 ? 'last' : 'layer'}
          x={x}
          y={3}
          width={width}
          height={HEIGHT - 6}
        />
      ))}
      <path className="shank" d={`M4 ${y}H${tip - 5}`} />
      <path className="point" d={`M${tip - 6} ${y - 2.5}L${tip} ${y}L${tip - 6} ${y + 2.5}z`} />
      {fastener.kind !== 'peg' && <path className="head" d={`M4 ${y - 6}v12l5-6z`} />}
    </svg>
  )
}
