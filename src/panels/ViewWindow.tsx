import type { ReactNode } from 'react'
import type { Hive } from '../hive/hive.ts'
import { useAnswers } from '../store/answers.ts'
import { HeatLegend } from './view/HeatLegend.tsx'
import { PartCaption } from './view/PartCaption.tsx'
import { ViewControls } from './view/ViewControls.tsx'

interface ViewWindowProps {
  /** Draws a hive; it comes from the scene, which the panels do not know. */
  readonly drawHive: (hive: Hive) => ReactNode
  /** Something lies over it, so nothing of it can be used. */
  readonly isCovered: boolean
}

/** The middle of the sheet: the hive, or word that there is none yet. */
export const ViewWindow = ({ drawHive, isCovered }: ViewWindowProps) => {
  const { answer, stale } = useAnswers()
  return (
    <section className="sheet-view" aria-label="The hive" inert={isCovered}>
      <div className="view-window">
        {answer && <HeatLegend />}
        <div className="view-hive">
          {answer ? drawHive(answer.hive) : <EmptyView />}
          {answer && stale && <p className="view-stale">The last hive that can be built</p>}
          <PartCaption />
        </div>
      </div>
      <ViewControls />
    </section>
  )
}

const EmptyView = () => (
  <div className="view-empty">
    <p>
      The hive appears here as soon as it can be built. The notes at the inputs say what to change.
    </p>
  </div>
)
