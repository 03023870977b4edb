import { MAX_FILE_BYTES, tooLargeMessage, useOpenStore } from '../../store/openDesign.ts'

/** Reads a design file that was chosen or dropped. A file that can't be read changes nothing. */
export const openFile = async (file: File): Promise<void> => {
  const { offerText, refuse } = useOpenStore.getState()
  if (file.size > MAX_FILE_BYTES) return refuse(tooLargeMessage(file.size))
  try {
    offerText(await file.text(), 'file')
  } catch {
    refuse(`The browser could not read ${file.name}. Choose it again.`)
  }
}
