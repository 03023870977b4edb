import { addEntrance, addVent, removeEntrance, removeVent } from '../../design/openingEdits.ts'
import { MAX_ENTRANCES, MAX_VENTS } from '../../design/schema.ts'
import { useDesignStore } from '../../store/designStore.ts'
import { FieldInput } from './FieldInput.tsx'

const ENTRANCE_KEYS = [
  'wall',
  'form',
  'widthMm',
  'heightMm',
  'centreMm',
  'bottomMm',
  'winterWidthMm',
]
const VENT_KEYS = ['wall', 'widthMm', 'heightMm', 'centreMm', 'belowRestMm']

const LISTS = {
  entrances: {
    name: 'Entrance',
    most: MAX_ENTRANCES,
    keys: ENTRANCE_KEYS,
    add: addEntrance,
    remove: removeEntrance,
    none: 'There is no entrance: the bees cannot fly.',
  },
  vents: {
    name: 'Upper vent',
    most: MAX_VENTS,
    keys: VENT_KEYS,
    add: addVent,
    remove: removeVent,
    none: 'No upper vent. Beekeepers disagree on vents: try one and compare the figures.',
  },
} as const

/** The entrances or the vents of the hive, each with its fields, to add to and take from. */
export const OpeningList = ({ list }: { readonly list: keyof typeof LISTS }) => {
  const { name, most, keys, add, remove, none } = LISTS[list]
  const count = useDesignStore((s) => s.design.openings[list].length)
  const edit = useDesignStore((s) => s.edit)
  const places = Array.from({ length: count }, (_, place) => place)
  return (
    <>
      {count === 0 && <p className="about opening-none">{none}</p>}
      {places.map((place) => (
        <section className="section" key={place}>
          <div className="section-head">
            <h3>
              {name} {place + 1}
            </h3>
            <button
              type="button"
              className="plain"
              aria-label={`Remove ${name.toLowerCase()} ${place + 1}`}
              onClick={() => edit((design) => remove(design, place))}
            >
              Remove
            </button>
          </div>
          {keys.map((key) => (
            <FieldInput key={key} path={`openings.${list}.${place}.${key}`} />
          ))}
        </section>
      ))}
      {count < most && (
        <button type="button" className="plain add" onClick={() => edit(add)}>
          Add {count === 0 ? 'an' : 'another'} {name.toLowerCase()}
        </button>
      )}
    </>
  )
}
