import { useEffect, useState } from 'react'
import type { Hive } from '../../hive/hive.ts'
import type { HeatSectionQuestion } from '../../sheets/heatSectionDrawing.ts'
import { useHeatField } from '../../store/heatField.ts'
import { useViewStore, type ViewState } from '../../store/viewStore.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { useNight } from '../night.ts'

/** Where the drawing cuts the hive, in its own millimetres. */
interface Cut {
  readonly axis: 'x' | 'z'
  readonly at: number
}

interface SectionLook {
  readonly units: UnitPreferences
  /** The temperatures to colour it by, if it is to be coloured. */
  readonly heat: Omit<HeatSectionQuestion, 'units' | 'area'> | undefined
}

/** The hive in section, for a browser that cannot draw it in space. The section controls move the cut. */
export const FlatHive = ({ hive }: { readonly hive: Hive }) => {
  const axis = useViewStore((s) => s.sectionAxis)
  const share = useViewStore((s) => s.sectionAt)
  const units = useViewStore((s) => s.units)
  const showHeat = useViewStore((s) => s.showHeat)
  const { outsideC, insideC } = useNight()
  const field = useHeatField((s) => (showHeat ? s.answer : undefined))
  const [source, setSource] = useState<string>()
  useEffect(() => {
    let isCurrent = true
    const heat = field && { answer: field, temperatures: { outsideC, insideC } }
    drawSection(hive, cutOf(hive, axis, share), { units, heat }).then((svg) => {
      if (isCurrent) setSource(`data:image/svg+xml,${encodeURIComponent(svg)}`)
    })
    return () => {
      isCurrent = false
    }
  }, [hive, axis, share, units, field, outsideC, insideC])
  return (
    <figure className="flat-hive">
      {source && (
        <img
          src={source}
          alt={`${axis === 'z' ? 'The hive cut along its length' : 'The hive cut across'}${
            field ? ', coloured by temperature' : ''
          }`}
        />
      )}
      <figcaption>
        This browser cannot show the hive in space, so it is drawn cut open. Figures, lists and the
        build sheet are complete.
      </figcaption>
    </figure>
  )
}

/** As far along the hive as the slider says; none while it is whole. */
const cutOf = (
  { dimensions: d }: Hive,
  axis: ViewState['sectionAxis'],
  share: number,
): Cut | undefined => {
  if (axis === 'z') return { axis, at: (share - 0.5) * d.outerWidth }
  return axis === 'x' ? { axis, at: share * d.outerLength - d.wallThickness } : undefined
}

/** Few people need it, so it is loaded when it is needed. */
const drawSection = async (
  hive: Hive,
  cut: Cut | undefined,
  { units, heat }: SectionLook,
): Promise<string> => {
  const [{ sectionDrawing }, { sectionPlace }, { drawingToSvg }] = await Promise.all([
    import('../../sheets/sectionDrawing.ts'),
    import('../../sheets/views/sectionPlace.ts'),
    import('../../sheets/svg.ts'),
  ])
  // A whole hive is cut across where the plane shows insulation and a frame.
  const plane = cut ?? { axis: 'x', at: sectionPlace(hive) }
  if (heat === undefined) return drawingToSvg(sectionDrawing(hive, plane, units))
  const { heatSectionDrawing } = await import('../../sheets/heatSectionDrawing.ts')
  return drawingToSvg(heatSectionDrawing(hive, plane, { ...heat, units }))
}
