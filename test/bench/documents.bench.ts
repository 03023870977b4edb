import { bench, describe } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import { parseDesign } from '../../src/design/parseDesign.ts'
import { setField } from '../../src/design/setField.ts'
import { decodeShare, encodeShare } from '../../src/design/shareLink.ts'
import { kept } from './kept.ts'

const text = formatDesign(DEFAULT_DESIGN)
const changed = EXAMPLES.at(-1)?.design ?? DEFAULT_DESIGN
const link = encodeShare(changed)

describe('documents', () => {
  bench('save as text', () => {
    kept.sum += formatDesign(DEFAULT_DESIGN).length
  })
  bench('open from text', () => {
    kept.sum += parseDesign(text).kind.length
  })
  bench('make a link', () => {
    kept.sum += encodeShare(changed).length
  })
  bench('open a link', () => {
    kept.sum += decodeShare(link).kind.length
  })
  bench('change one number', () => {
    kept.sum += setField(DEFAULT_DESIGN, 'walls.coreMm', 75).design.walls.coreMm
  })
})
