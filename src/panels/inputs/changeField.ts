import { editField } from '../../design/editField.ts'
import type { Design } from '../../design/schema.ts'
import { useDesignStore } from '../../store/designStore.ts'
import type { FieldValue } from './useFieldValue.ts'

/** Sets one field as one edit, or as part of the gesture under way. */
export const changeField = (path: string, value: FieldValue): void => {
  const { edit, gestureStart } = useDesignStore.getState()
  edit((design) => editField(baseFor(path, design, gestureStart), path, value).design)
}

/**
 * A drag of the frame count starts again from the row it began with: otherwise dragging down and up
 * again would leave the boards and entrances squeezed.
 */
const baseFor = (path: string, design: Design, start: Design | undefined): Design =>
  path === 'cavity.frames' && start !== undefined
    ? { ...design, cavity: start.cavity, openings: start.openings }
    : design
