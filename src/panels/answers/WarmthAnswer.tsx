import type { HeatReport } from '../../reports/heat/computeHeat.ts'
import type { PanelHeat } from '../../reports/heat/panelHeat.ts'
import { PanelAnswer } from './PanelAnswer.tsx'
import { ColdestPlace } from './warmth/ColdestPlace.tsx'
import { EdgeLosses } from './warmth/EdgeLosses.tsx'
import { resistanceTogether } from './warmth/fieldWords.ts'
import { LeftOut } from './warmth/LeftOut.tsx'
import { LossShares } from './warmth/LossShares.tsx'
import { OtherHomes } from './warmth/OtherHomes.tsx'
import { Remedies } from './warmth/Remedies.tsx'
import { useComparisons } from './warmth/useComparisons.ts'
import { useFieldView } from './warmth/useFieldView.ts'
import { WholeHive } from './warmth/WholeHive.tsx'

/** How warm the hive is: the whole, where its heat goes, each panel, and what else there might be. */
export const WarmthAnswer = ({ heat }: { readonly heat: HeatReport }) => {
  const field = useFieldView()
  const comparison = useComparisons()
  const walls = heat.panels.filter((panel) => panel.id.endsWith('wall'))
  const inHive = (panels: readonly PanelHeat[]) =>
    resistanceTogether(
      (field.answer?.panels ?? []).filter(({ id }) => panels.some((panel) => panel.id === id)),
    )
  const values = [heat.walls, heat.lid, heat.floor].flatMap((p) => [
    p.withRailsM2KPerW,
    p.betweenRailsM2KPerW,
    p.targetM2KPerW,
  ])
  const end = Math.ceil(Math.max(1, ...values) * 2) / 2
  const wallFigures = {
    ...heat.walls,
    name: 'Walls',
    lowerBoundM2KPerW: Math.min(...walls.map((wall) => wall.lowerBoundM2KPerW)),
    upperBoundM2KPerW: Math.max(...walls.map((wall) => wall.upperBoundM2KPerW)),
  }
  const shared = { end, field }
  return (
    <>
      <WholeHive heat={heat} field={field} />
      <LossShares field={field} />
      <ColdestPlace field={field} />
      <PanelAnswer {...shared} figures={wallFigures} panels={walls} inHive={inHive(walls)} />
      <PanelAnswer {...shared} figures={heat.lid} panels={[heat.lid]} inHive={inHive([heat.lid])} />
      <PanelAnswer
        {...shared}
        figures={heat.floor}
        panels={[heat.floor]}
        inHive={inHive([heat.floor])}
      />
      <EdgeLosses field={field} />
      <Remedies comparison={comparison} />
      <OtherHomes field={field} comparison={comparison} />
      <LeftOut field={field} />
    </>
  )
}
