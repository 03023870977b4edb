import { type ReactNode, useEffect, useId, useRef } from 'react'

interface DialogProps {
  readonly title: string
  readonly onClose: () => void
  readonly children: ReactNode
}

/** A slip of paper over the sheet. Escape closes it; keys stay inside while it is open. */
export const Dialog = ({ title, onClose, children }: DialogProps) => {
  const id = useId()
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => {
    const element = dialog.current
    element?.showModal()
    return () => element?.close()
  }, [])
  return (
    <dialog
      ref={dialog}
      aria-labelledby={id}
      onCancel={(e) => {
        e.preventDefault()
        onClose()
      }}
    >
      <h2 id={id}>{title}</h2>
      {children}
    </dialog>
  )
}
