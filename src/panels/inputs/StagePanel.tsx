import { useEffect, useRef } from 'react'
import { useViewStore } from '../../store/viewStore.ts'
import { OpeningList } from './OpeningList.tsx'
import { Refusals } from './Refusals.tsx'
import { SectionFields } from './SectionFields.tsx'
import { StockList } from './StockList.tsx'
import { STAGES } from './stages.ts'

/** The inputs of the chosen stage. */
export const StagePanel = ({ isCovered }: { readonly isCovered: boolean }) => {
  const stage = useViewStore((s) => s.stage)
  const panel = useRef<HTMLElement>(null)
  const shown = useRef(stage)
  useEffect(() => {
    if (shown.current === stage) return
    shown.current = stage
    if (panel.current) showTop(panel.current)
  }, [stage])
  const place = STAGES.findIndex((entry) => entry.stage === stage)
  const entry = STAGES[place]
  if (entry === undefined) return null
  return (
    <section
      className="inputs"
      id="inputs"
      ref={panel}
      aria-label={`${entry.name}: inputs`}
      inert={isCovered}
    >
      <header className="inputs-head">
        <span className="inputs-number" aria-hidden="true">
          {place + 1}
        </span>
        <h2>{entry.name}</h2>
        <p>{entry.purpose}</p>
      </header>
      <Refusals />
      <div key={stage}>
        {stage === 'openings' && (
          <>
            <OpeningList list="entrances" />
            <OpeningList list="vents" />
          </>
        )}
        {entry.sections.map((section) => (
          <SectionFields key={section.title} section={section} />
        ))}
        {stage === 'shop' && (
          <>
            <StockList list="lumber" />
            <StockList list="sheets" />
          </>
        )}
      </div>
    </section>
  )
}

/** A new stage starts at its top, not where the last one was left. */
const showTop = (panel: HTMLElement): void => {
  panel.scrollTop = 0
  if (panel.getBoundingClientRect().top < 0) panel.scrollIntoView()
}
