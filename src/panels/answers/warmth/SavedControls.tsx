import { useRef } from 'react'
import { useDesignStore } from '../../../store/designStore.ts'
import { useSavedDesigns } from '../../../store/savedDesigns.ts'
import { readDesignFile } from '../../header/readDesignFile.ts'

/** Puts a design into the list that is compared: one from a file, or the present one. */
export const SavedControls = () => {
  const picker = useRef<HTMLInputElement>(null)
  const message = useSavedDesigns((s) => s.message)
  const add = useSavedDesigns((s) => s.add)
  return (
    <div className="saved-controls wide">
      <button type="button" className="plain" onClick={() => picker.current?.click()}>
        Compare with a saved design
      </button>
      <input
        ref={picker}
        type="file"
        hidden
        aria-label="Design file to compare with"
        accept=".json,application/json"
        onChange={(e) => {
          const file = e.target.files?.[0]
          if (file) addFile(file)
          // The same file may be chosen again.
          e.target.value = ''
        }}
      />
      <button type="button" className="plain" onClick={() => add(useDesignStore.getState().design)}>
        Keep this design for comparing
      </button>
      <p
        role="status"
        className={message?.kind === 'error' ? 'saved-message wrong' : 'saved-message'}
      >
        {message?.text}
      </p>
    </div>
  )
}

const addFile = async (file: File): Promise<void> => {
  const { addText, refuse } = useSavedDesigns.getState()
  const read = await readDesignFile(file)
  if (read.kind === 'ok') addText(read.text)
  else refuse(read.message)
}
