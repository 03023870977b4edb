import {
  chooseDivider,
  chooseFrameStandard,
  setField,
  setFrameCount,
} from '../../design/edits.ts'
import type { Design } from '../../design/schema.ts'
import { useDesignStore } from '../../store/designStore.ts'
import type { FieldValue } from './useFieldValue.ts'

/** Sets one field as one edit; some fields bring others along, as a builder would expect. */
export const changeField = (path: string, value: FieldValue): void =>
  useDesignStore.getState().edit((design) => changed(design, path, value))

const changed = (design: Design, path: string, value: FieldValue): Design => {
  if (path === 'frame.standard') return chooseFrameStandard(design, String(value))
  if (path === 'cavity.frames') return setFrameCount(design, Number(value))
  if (path === 'cavity.divider') return chooseDivider(design, String(value))
  return setField(design, path, value)
}
