import type { HeatReport } from '../../reports/heat/computeHeat.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { formatTrimmed } from '../../units/number.ts'
import { formatTemperature } from '../../units/temperature.ts'
import { formatConductance } from '../../units/thermal.ts'
import { PanelAnswer } from './PanelAnswer.tsx'

/** How warm the hive is: walls, lid, floor, and the whole. */
export const WarmthAnswer = ({ heat }: { readonly heat: HeatReport }) => {
  const units = useViewStore((s) => s.units)
  const coldNightC = useDesignStore((s) => s.design.site.coldNightC)
  const walls = heat.panels.filter((panel) => panel.id.endsWith('wall'))
  const values = [heat.walls, heat.lid, heat.floor].flatMap((p) => [
    p.withRailsM2KPerW,
    p.betweenRailsM2KPerW,
    p.targetM2KPerW,
  ])
  const end = Math.ceil(Math.max(1, ...values) * 2) / 2
  return (
    <>
      <PanelAnswer
        figures={{
          ...heat.walls,
          name: 'Walls',
          lowerBoundM2KPerW: Math.min(...walls.map((wall) => wall.lowerBoundM2KPerW)),
          upperBoundM2KPerW: Math.max(...walls.map((wall) => wall.upperBoundM2KPerW)),
        }}
        panels={walls}
        end={end}
      />
      <PanelAnswer figures={heat.lid} panels={[heat.lid]} end={end} />
      <PanelAnswer figures={heat.floor} panels={[heat.floor]} end={end} />
      <section className="panel-answer whole">
        <h4>The whole hive</h4>
        <dl className="figures">
          <dt>Heat lost for each degree</dt>
          <dd>{formatConductance(heat.conductanceWPerK, units.thermal)}</dd>
          <dt>
            Heat lost on a night of{' '}
            {formatTemperature(coldNightC, units.temperature, { decimals: 0 })}
          </dt>
          <dd>{formatTrimmed(heat.coldNightLossW, 1)} W</dd>
        </dl>
        <p className="about">The sum of the panels; corners and edges are not in it.</p>
      </section>
    </>
  )
}
