import { useOpenStore } from '../../store/openDesign.ts'
import { readDesignFile } from './readDesignFile.ts'

/** Reads a design file that was chosen or dropped. A file that can't be read changes nothing. */
export const openFile = async (file: File): Promise<void> => {
  const { offerText, refuse } = useOpenStore.getState()
  const read = await readDesignFile(file)
  if (read.kind === 'ok') offerText(read.text, 'file')
  else refuse(read.message)
}
