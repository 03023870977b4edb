import { formatDesign } from '../../design/formatDesign.ts'
import { fileNameFor } from '../../sheets/fileNames.ts'
import { useDesignStore } from '../../store/designStore.ts'

/** Hands a file to the person. Must be called straight from a click, or some browsers refuse it. */
export const saveFile = (name: string, blob: Blob): void => {
  const url = URL.createObjectURL(blob)
  const link = document.createElement('a')
  link.href = url
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
  // Some browsers start to read the file only after the click has returned.
  setTimeout(() => URL.revokeObjectURL(url), 60_000)
}

/** Saves the present design as a file that can be opened again. */
export const saveDesignFile = (): void => {
  const { design } = useDesignStore.getState()
  const blob = new Blob([formatDesign(design)], { type: 'application/json' })
  saveFile(fileNameFor(design.title.name, '', 'json'), blob)
}
