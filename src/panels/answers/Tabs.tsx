import { type KeyboardEvent, type ReactNode, useId, useRef } from 'react'

export interface Tab {
  readonly id: string
  readonly name: string
  readonly content: ReactNode
}

interface TabsProps {
  readonly name: string
  readonly tabs: readonly Tab[]
  readonly chosen: string
  readonly onChoose: (id: string) => void
}

/** Index tabs on the edge of the sheet. Arrow keys, Home and End move between them. */
export const Tabs = ({ name, tabs, chosen, onChoose }: TabsProps) => {
  const id = useId()
  const list = useRef<HTMLDivElement>(null)
  const place = Math.max(
    0,
    tabs.findIndex((tab) => tab.id === chosen),
  )
  const shown = tabs[place]

  const walk = (event: KeyboardEvent) => {
    const to = tabTarget(event.key, place, tabs.length)
    const next = to === undefined ? undefined : tabs[to]
    if (to === undefined || next === undefined) return
    event.preventDefault()
    onChoose(next.id)
    list.current?.querySelectorAll('button')[to]?.focus()
  }
  return (
    <div className="tabs">
      <div className="tab-list" role="tablist" aria-label={name} ref={list} onKeyDown={walk}>
        {tabs.map((tab) => (
          <button
            key={tab.id}
            type="button"
            role="tab"
            id={`${id}-${tab.id}`}
            aria-selected={tab === shown}
            aria-controls={`${id}-panel`}
            tabIndex={tab === shown ? 0 : -1}
            onClick={() => onChoose(tab.id)}
          >
            {tab.name}
          </button>
        ))}
      </div>
      {shown && (
        <div
          className="tab-panel"
          role="tabpanel"
          id={`${id}-panel`}
          aria-labelledby={`${id}-${shown.id}`}
          // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling panel must be reachable by keys
          tabIndex={0}
        >
          {shown.content}
        </div>
      )}
    </div>
  )
}

const tabTarget = (key: string, place: number, count: number): number | undefined => {
  if (key === 'ArrowRight') return (place + 1) % count
  if (key === 'ArrowLeft') return (place - 1 + count) % count
  if (key === 'Home') return 0
  return key === 'End' ? count - 1 : undefined
}
