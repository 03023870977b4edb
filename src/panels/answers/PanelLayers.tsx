import type { PanelHeat } from '../../reports/heat/computeHeat.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { formatLength } from '../../units/length.ts'
import { formatTrimmed } from '../../units/number.ts'
import { formatResistance } from '../../units/thermal.ts'

interface PanelLayersProps {
  readonly panel: PanelHeat
  /** As it stands in this hive, m²K/W. */
  readonly inHive: number | undefined
}

/** The layers of one panel from inside to outside. */
export const PanelLayers = ({ panel, inHive }: PanelLayersProps) => {
  const units = useViewStore((s) => s.units)
  const show = (value: number) => formatResistance(value, units.thermal)
  const answers = [
    `${show(panel.withRailsM2KPerW)} with its rails`,
    ...(inHive === undefined ? [] : [`${show(inHive)} in this hive`]),
    `${formatTrimmed(panel.timberFraction * 100, 0)} % of it timber`,
  ]
  return (
    <table className="layers">
      <caption>
        {panel.name}: {answers.join(', ')}
      </caption>
      <tbody>
        <tr>
          <th scope="row">Air film inside</th>
          <td />
          <td>{show(panel.surfaceInsideM2KPerW)}</td>
        </tr>
        {panel.layers.map((layer) => (
          <tr key={layer.name}>
            <th scope="row">{layer.name}</th>
            <td>{formatLength(layer.thicknessMm, units.length, { withUnit: true })}</td>
            <td>{show(layer.resistanceM2KPerW)}</td>
          </tr>
        ))}
        <tr>
          <th scope="row">Air film outside</th>
          <td />
          <td>{show(panel.surfaceOutsideM2KPerW)}</td>
        </tr>
      </tbody>
    </table>
  )
}
