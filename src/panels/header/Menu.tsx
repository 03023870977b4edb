import { type FocusEvent, type KeyboardEvent, type ReactNode, useId, useRef, useState } from 'react'

interface MenuProps {
  readonly name: string
  readonly strong?: boolean
  readonly children: ReactNode
}

/** A button that unfolds a slip of paper with more buttons; Escape or leaving it folds it up. */
export const Menu = ({ name, strong = false, children }: MenuProps) => {
  const id = useId()
  const [isOpen, setOpen] = useState(false)
  const button = useRef<HTMLButtonElement>(null)

  const leave = (event: FocusEvent<HTMLElement>) => {
    if (!event.currentTarget.contains(event.relatedTarget)) setOpen(false)
  }
  const pressKey = (event: KeyboardEvent) => {
    if (event.key !== 'Escape' || !isOpen) return
    event.stopPropagation()
    setOpen(false)
    button.current?.focus()
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: it listens to what its buttons send up
    <div className="menu" onBlur={leave} onKeyDown={pressKey}>
      <button
        ref={button}
        type="button"
        className={strong ? 'plain strong menu-button' : 'plain menu-button'}
        aria-expanded={isOpen}
        aria-controls={id}
        // Safari does not focus a clicked button by itself, and focus leaving is what closes it.
        onClick={(e) => {
          e.currentTarget.focus()
          setOpen(!isOpen)
        }}
      >
        {name}
      </button>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: closes after a choice made by its buttons */}
      {/* biome-ignore lint/a11y/useKeyWithClickEvents: a button's Enter arrives as a click */}
      <div
        className="menu-slip"
        id={id}
        hidden={!isOpen}
        tabIndex={-1}
        onClick={(e) =>
          e.target instanceof HTMLElement && e.target.closest('button') && setOpen(false)
        }
      >
        {children}
      </div>
    </div>
  )
}
