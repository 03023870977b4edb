import { useDesignStore } from '../../store/designStore.ts'
import { changeField } from '../inputs/changeField.ts'
import { useGesture } from '../inputs/useGesture.ts'

/** The name of the design, written where it is read. */
export const NameField = () => {
  const name = useDesignStore((s) => s.design.title.name)
  const gesture = useGesture()
  return (
    <input
      className="name-field"
      type="text"
      aria-label="Name of the hive"
      value={name}
      maxLength={80}
      spellCheck={false}
      onChange={(e) => {
        gesture.begin()
        changeField('title.name', e.target.value)
      }}
      onBlur={gesture.end}
      onKeyDown={(e) => e.key === 'Enter' && e.currentTarget.blur()}
    />
  )
}
