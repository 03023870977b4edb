import { chooseDivider } from './chooseDivider.ts'
import { chooseFrameStandard, setFrameCount } from './frameEdits.ts'
import type { Design } from './schema.ts'
import { seatBoards } from './seatBoards.ts'
import { type EditResult, type FieldValue, setField } from './setField.ts'

/**
 * Sets a field as a person means it: a frame standard brings its sizes, the number of frames moves the
 * boards, a divider brings a second entrance, and a second follower finds a place of its own. Every other field is set alone, as by `setField`,
 * which also judges the value first.
 */
export function editField(design: Design, path: string, value: FieldValue): EditResult {
  const set = setField(design, path, value)
  if (set.design === design) return set
  return { design: withFollowUps(design, path, set.design), limited: set.limited }
}

function withFollowUps(before: Design, path: string, set: Design): Design {
  switch (path) {
    case 'frame.standard':
      return chooseFrameStandard(before, set.frame.standard)
    case 'cavity.frames':
      return setFrameCount(before, set.cavity.frames)
    case 'cavity.divider':
      return chooseDivider(before, set.cavity.divider)
    case 'cavity.followers':
      return { ...set, cavity: seatBoards(set.cavity) }
    default:
      return set
  }
}
