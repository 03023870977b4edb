import { useEffect } from 'react'
import { openFile } from './header/openFile.ts'

/** Opens a design file that is dropped anywhere on the page. */
export const useDropFile = (): void => {
  useEffect(() => {
    addEventListener('dragover', allowFile)
    addEventListener('drop', dropFile)
    return () => {
      removeEventListener('dragover', allowFile)
      removeEventListener('drop', dropFile)
    }
  }, [])
}

const allowFile = (event: DragEvent): void => {
  if (event.dataTransfer?.types.includes('Files')) event.preventDefault()
}

const dropFile = (event: DragEvent): void => {
  const file = event.dataTransfer?.files[0]
  if (file === undefined) return
  event.preventDefault()
  openFile(file)
}
