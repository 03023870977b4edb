import { type Box, boundingBox } from '../../geometry/box.ts'
import { solidBounds } from '../../geometry/solid.ts'
import type { Hive } from '../../hive/hive.ts'

/** The hive from the front in plain lines, for a browser that cannot draw it in space. */
export const FlatHive = ({ hive }: { readonly hive: Hive }) => {
  // Far parts first, so that near ones cover them.
  const boxes = hive.parts
    .flatMap((part) => part.solids.map(solidBounds))
    .sort((a, b) => a.z1 - b.z1)
  if (boxes.length === 0) return null
  const all = boundingBox(boxes)
  const margin = 40
  const view = [
    all.x0 - margin,
    -all.y1 - margin,
    all.x1 - all.x0 + 2 * margin,
    all.y1 - all.y0 + 2 * margin,
  ]
  return (
    <figure className="flat-hive">
      <svg viewBox={view.join(' ')} role="img" aria-label="The hive from the front">
        <path d={boxes.map(outline).join('')} />
      </svg>
      <figcaption>
        This browser cannot draw the hive in space, so it is shown from the front. Figures, lists
        and the build sheet are complete.
      </figcaption>
    </figure>
  )
}

/** The front face of a box; y runs down on the screen. */
const outline = (b: Box): string => `M${b.x0} ${-b.y1}H${b.x1}V${-b.y0}H${b.x0}z`
