import { useRef } from 'react'
import { openFile } from './openFile.ts'
import { saveDesignFile } from './saveFile.ts'

interface FileActionsProps {
  /** The class of each button; none inside a menu. */
  readonly look?: string
  readonly onShare: () => void
}

/** Open, save, and the link. */
export const FileActions = ({ look, onShare }: FileActionsProps) => {
  const picker = useRef<HTMLInputElement>(null)
  return (
    <>
      <button type="button" className={look} onClick={() => picker.current?.click()}>
        Open
      </button>
      <input
        ref={picker}
        type="file"
        hidden
        accept=".json,application/json"
        onChange={(e) => {
          const file = e.target.files?.[0]
          if (file) openFile(file)
          // The same file may be chosen again.
          e.target.value = ''
        }}
      />
      <button type="button" className={look} onClick={saveDesignFile}>
        Save
      </button>
      <button type="button" className={look} onClick={onShare}>
        Link
      </button>
    </>
  )
}
