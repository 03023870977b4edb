import { useDesignStore } from '../../store/designStore.ts'
import { type OpenedFrom, useOpenStore } from '../../store/openDesign.ts'
import { Dialog } from './Dialog.tsx'

const SOURCE: Readonly<Record<OpenedFrom, string>> = {
  link: 'This link holds',
  file: 'This file holds',
  example: 'This is',
}

/** Asks before another design takes the place of the present one. */
export const OpenDialog = () => {
  const pending = useOpenStore((s) => s.pending)
  const accept = useOpenStore((s) => s.accept)
  const decline = useOpenStore((s) => s.decline)
  const present = useDesignStore((s) => s.design.title.name)
  if (pending === undefined) return null
  return (
    <Dialog title={`Open ${pending.name}?`} onClose={decline}>
      <p>
        {SOURCE[pending.from]} {pending.name}. It takes the place of {present || 'your design'} on
        this sheet. Undo brings yours back; save it as a file if you want to keep it for long.
      </p>
      {pending.note && <p>{pending.note}</p>}
      <p className="dialog-actions">
        <button type="button" className="plain strong" onClick={accept}>
          Open it
        </button>
        <button type="button" className="plain" onClick={decline}>
          Keep mine
        </button>
      </p>
    </Dialog>
  )
}
