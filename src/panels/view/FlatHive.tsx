import { useEffect, useState } from 'react'
import type { Hive } from '../../hive/hive.ts'

/** The hive as a line drawing, for a browser that cannot draw it in space. */
export const FlatHive = ({ hive }: { readonly hive: Hive }) => {
  const [source, setSource] = useState<string>()
  useEffect(() => {
    let isCurrent = true
    drawFlat(hive).then((svg) => {
      if (isCurrent) setSource(`data:image/svg+xml,${encodeURIComponent(svg)}`)
    })
    return () => {
      isCurrent = false
    }
  }, [hive])
  return (
    <figure className="flat-hive">
      {source && <img src={source} alt="The hive from its left front corner, lid lifted off" />}
      <figcaption>
        This browser cannot show the hive in space, so it is drawn in lines. Figures, lists and the
        build sheet are complete.
      </figcaption>
    </figure>
  )
}

/** Few people need it, so it is loaded when it is needed. */
const drawFlat = async (hive: Hive): Promise<string> => {
  const [{ pictorialView }, { drawingToSvg }] = await Promise.all([
    import('../../sheets/views/pictorialView.ts'),
    import('../../sheets/svg.ts'),
  ])
  return drawingToSvg(pictorialView(hive, { widthMm: 240, heightMm: 180 }))
}
