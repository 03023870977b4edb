import { useDesignStore } from '../../store/designStore.ts'

/** Undo and redo, always in sight. */
export const HistoryButtons = () => {
  const undo = useDesignStore((s) => s.undo)
  const redo = useDesignStore((s) => s.redo)
  const canUndo = useDesignStore((s) => s.past.length > 0)
  const canRedo = useDesignStore((s) => s.future.length > 0)
  return (
    <div className="button-pair">
      <button type="button" className="plain" aria-disabled={!canUndo} onClick={undo}>
        Undo
      </button>
      <button type="button" className="plain" aria-disabled={!canRedo} onClick={redo}>
        Redo
      </button>
    </div>
  )
}
