import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import { setFrameCount } from '../../src/design/frameEdits.ts'
import { MAX_SAVED, nameSaved, useSavedDesigns } from '../../src/store/savedDesigns.ts'

const initial = useSavedDesigns.getInitialState()
afterEach(() => useSavedDesigns.setState(initial, true))

const list = () => useSavedDesigns.getState()
const withFrames = (frames: number) => setFrameCount(DEFAULT_DESIGN, frames)

describe('nameSaved', () => {
  it('gives equal designs equal ids, and others different ones', () => {
    const [first] = nameSaved([DEFAULT_DESIGN])
    const [copy] = nameSaved([structuredClone(DEFAULT_DESIGN)])
    const [other] = nameSaved([withFrames(12)])
    expect(first?.id).toMatch(/^[0-9a-f]{8}$/)
    expect(copy?.id).toBe(first?.id)
    expect(other?.id).not.toBe(first?.id)
  })

  it('numbers designs of the same name, and leaves out one that comes twice', () => {
    const names = nameSaved([DEFAULT_DESIGN, withFrames(12), DEFAULT_DESIGN, withFrames(14)])
    const { name } = DEFAULT_DESIGN.title
    expect(names.map((saved) => saved.name)).toEqual([name, `${name} (2)`, `${name} (3)`])
  })
})

describe('useSavedDesigns', () => {
  it('adds a design, says so, and takes it out again', () => {
    list().add(DEFAULT_DESIGN)
    expect(list().saved.map((saved) => saved.design)).toEqual([DEFAULT_DESIGN])
    expect(list().message).toEqual({
      kind: 'info',
      text: `${DEFAULT_DESIGN.title.name} is in the list.`,
    })
    const [saved] = list().saved
    list().remove(saved?.id ?? '')
    expect(list().saved).toEqual([])
    expect(list().message).toBeUndefined()
  })

  it('refuses a design that is there already', () => {
    list().add(DEFAULT_DESIGN)
    list().addText(formatDesign(DEFAULT_DESIGN))
    expect(list().saved).toHaveLength(1)
    expect(list().message).toMatchObject({
      kind: 'error',
      text: expect.stringContaining('in the list already'),
    })
  })

  it('refuses one more than it holds', () => {
    for (let i = 0; i <= MAX_SAVED; i += 1) list().add(withFrames(10 + i))
    expect(list().saved).toHaveLength(MAX_SAVED)
    expect(list().message?.kind).toBe('error')
    expect(list().message?.text).toContain(`holds ${MAX_SAVED} designs`)
  })

  it('reads a design file', () => {
    const [, other] = EXAMPLES
    if (other === undefined) throw new Error('There are no examples.')
    list().addText(formatDesign(other.design))
    expect(list().saved[0]?.design).toEqual(other.design)
  })

  it.each(['', 'nonsense', '{"combwright":99}', '{"combwright":1,"walls":{"coreMm":9000}}'])(
    'leaves the list alone for %j',
    (text) => {
      list().add(DEFAULT_DESIGN)
      const { saved } = list()
      list().addText(text)
      expect(list().saved).toBe(saved)
      expect(list().message).toMatchObject({
        kind: 'error',
        text: expect.stringMatching(/\nThe list is unchanged\.$/),
      })
      list().dismissMessage()
      expect(list().message).toBeUndefined()
    },
  )
})
