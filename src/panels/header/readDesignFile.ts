import { MAX_FILE_BYTES, tooLargeMessage } from '../../store/openDesign.ts'

export type ReadFile =
  | { readonly kind: 'ok'; readonly text: string }
  | { readonly kind: 'bad'; readonly message: string }

/** The text of a file that was chosen or dropped; a file too large for a design is not read at all. */
export const readDesignFile = async (file: File): Promise<ReadFile> => {
  if (file.size > MAX_FILE_BYTES) return { kind: 'bad', message: tooLargeMessage(file.size) }
  try {
    return { kind: 'ok', text: await file.text() }
  } catch {
    return { kind: 'bad', message: `The browser could not read ${file.name}. Choose it again.` }
  }
}
