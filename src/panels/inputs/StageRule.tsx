import { type KeyboardEvent, useEffect, useRef } from 'react'
import { useBench } from '../../store/bench.ts'
import { useViewStore } from '../../store/viewStore.ts'
import { STAGES } from './stages.ts'

/** The stages of the job as the marks of a rule; arrow keys walk along it. */
export const StageRule = () => {
  const stage = useViewStore((s) => s.stage)
  const set = useViewStore((s) => s.set)
  const putBenchAway = useBench((s) => s.close)
  const list = useRef<HTMLOListElement>(null)

  // On a phone the rule is longer than the page is wide.
  useEffect(() => {
    const place = STAGES.findIndex((entry) => entry.stage === stage)
    list.current?.children[place]?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
  }, [stage])

  const walk = (event: KeyboardEvent) => {
    const by = WALK[event.key]
    if (by === undefined) return
    event.preventDefault()
    const place = STAGES.findIndex((entry) => entry.stage === stage)
    const to = (place + by + STAGES.length) % STAGES.length
    const next = STAGES[to]
    if (next === undefined) return
    set({ stage: next.stage })
    list.current?.querySelectorAll('button')[to]?.focus()
  }
  return (
    <nav className="rule" aria-label="Stages of the job">
      <ol ref={list} onKeyDown={walk}>
        {STAGES.map((entry, place) => (
          <li key={entry.stage}>
            <button
              type="button"
              aria-current={entry.stage === stage ? 'step' : undefined}
              onClick={() => {
                set({ stage: entry.stage })
                // It lies over the inputs that were asked for.
                putBenchAway()
              }}
            >
              <span className="rule-number" aria-hidden="true">
                {place + 1}
              </span>
              <span className="rule-name">{entry.name}</span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  )
}

const WALK: Readonly<Record<string, number>> = {
  ArrowDown: 1,
  ArrowRight: 1,
  ArrowUp: -1,
  ArrowLeft: -1,
}
