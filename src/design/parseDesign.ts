import { type ParsedDesign, refuseDesign } from './parsedDesign.ts'
import { readDesign } from './readDesign.ts'
import { MAX_DESIGN_BYTES, sizeMessage } from './sizeLimit.ts'

/**
 * Reads a saved design from text. Never throws, whatever the text holds. Missing fields take their
 * defaults and are listed in `filled`; anything else that is wrong is refused with a message a field.
 */
export function parseDesign(text: string): ParsedDesign {
  // Characters are at most as many as bytes, so this never refuses a file that is short enough.
  if (text.length > MAX_DESIGN_BYTES) return refuseDesign(sizeMessage(text.length))
  const json = parseJson(text)
  return json.kind === 'ok' ? readDesign(json.value) : refuseDesign(json.message)
}

type ParsedJson =
  | { readonly kind: 'ok'; readonly value: unknown }
  | { readonly kind: 'bad'; readonly message: string }

function parseJson(text: string): ParsedJson {
  // Some editors put an invisible mark at the start of a file.
  const plain = text.replace(/^\uFEFF/, '')
  if (plain.trim() === '') {
    return { kind: 'bad', message: 'This is empty. Choose a file that Combwright saved.' }
  }
  try {
    return { kind: 'ok', value: JSON.parse(plain) }
  } catch {
    return {
      kind: 'bad',
      message:
        'This is not a Combwright design, or it was cut short: its text is not whole JSON. ' +
        'Choose a file that Combwright saved.',
    }
  }
}
