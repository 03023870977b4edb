import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { EXAMPLES } from '../../src/design/examples.ts'
import { formatDesign } from '../../src/design/formatDesign.ts'
import type { Design } from '../../src/design/schema.ts'
import { setField } from '../../src/design/setField.ts'
import { encodeShare } from '../../src/design/shareLink.ts'
import { useDesignStore } from '../../src/store/designStore.ts'
import { MAX_FILE_BYTES, tooLargeMessage, useOpenStore } from '../../src/store/openDesign.ts'

const initialDesign = useDesignStore.getInitialState()
const initialOpen = useOpenStore.getInitialState()
afterEach(() => {
  useDesignStore.setState(initialDesign, true)
  useOpenStore.setState(initialOpen, true)
})

const open = () => useOpenStore.getState()
const present = (): Design => useDesignStore.getState().design
const setCore = (mm: number) =>
  useDesignStore.getState().edit((design) => setField(design, 'walls.coreMm', mm).design)

const [, other = EXAMPLES[0]] = EXAMPLES
if (other === undefined) throw new Error('There are no examples.')

describe('useOpenStore', () => {
  it('opens at once while the design is the untouched default, and can be undone', () => {
    open().offerText(formatDesign(other.design), 'file')
    expect(present()).toEqual(other.design)
    expect(open().pending).toBeUndefined()
    expect(open().message).toEqual({ kind: 'info', text: `${other.name} is open.` })
    useDesignStore.getState().undo()
    expect(present()).toBe(DEFAULT_DESIGN)
  })

  it('asks before it replaces a design that was edited', () => {
    setCore(70)
    const edited = present()
    open().offerShare(`#${encodeShare(other.design)}`)
    expect(present()).toBe(edited)
    expect(open().pending).toEqual({
      design: other.design,
      from: 'link',
      name: other.name,
      note: undefined,
    })
    open().accept()
    expect(present()).toEqual(other.design)
    expect(open().pending).toBeUndefined()
    useDesignStore.getState().undo()
    expect(present()).toBe(edited)
  })

  it('opens at once over a default design that was kept from the last visit', () => {
    useDesignStore.setState({ design: structuredClone(DEFAULT_DESIGN) })
    open().offerExample(other)
    expect(present()).toBe(other.design)
  })

  it('asks when edits were undone, since they could still be redone', () => {
    setCore(70)
    useDesignStore.getState().undo()
    expect(present()).toBe(DEFAULT_DESIGN)
    open().offerExample(other)
    expect(open().pending?.from).toBe('example')
    open().decline()
    useDesignStore.getState().redo()
    expect(present().walls.coreMm).toBe(70)
  })

  it('asks in the middle of a drag', () => {
    useDesignStore.getState().beginGesture()
    open().offerExample(other)
    expect(open().pending?.name).toBe(other.name)
  })

  it('keeps the present design when declined', () => {
    setCore(70)
    const edited = present()
    open().offerExample(other)
    open().decline()
    open().accept()
    expect(present()).toBe(edited)
    expect(open().pending).toBeUndefined()
  })

  it.each([
    ['broken', '{"combwright":1,'],
    ['foreign', '{"cells":[]}'],
    ['future', '{"combwright":7}'],
    ['huge', 'x'.repeat(50_000_000)],
    ['empty', ''],
    ['wrong', '{"combwright":1,"walls":{"coreMm":9000}}'],
  ])('leaves a touched and an untouched design alone for a %s file', (_, text) => {
    open().offerText(text, 'file')
    expect(useDesignStore.getState()).toBe(initialDesign)
    expect(open().message).toMatchObject({
      kind: 'error',
      text: expect.stringMatching(/\nYour present design is unchanged\.$/),
    })
    setCore(70)
    const touched = useDesignStore.getState()
    open().offerText(text, 'file')
    open().offerShare(text)
    expect(useDesignStore.getState()).toBe(touched)
    expect(open().pending).toBeUndefined()
  })

  it('keeps what waits when a second thing can’t be read', () => {
    setCore(70)
    open().offerExample(other)
    open().offerText('nothing', 'file')
    expect(open().pending?.name).toBe(other.name)
    open().dismissMessage()
    expect(open().message).toBeUndefined()
  })

  it('says what was missing in a file, in words', () => {
    setCore(70)
    const { coreMm: _, ...walls } = DEFAULT_DESIGN.walls
    open().offerText(JSON.stringify({ combwright: 2, ...DEFAULT_DESIGN, walls }), 'file')
    const note = 'What was missing took its usual value: Walls: Insulation thickness.'
    expect(open().pending?.note).toBe(note)
    open().accept()
    expect(open().message?.text).toBe(`Quarry Lane long hive is open. ${note}`)
  })

  it('names a design that has no name', () => {
    setCore(70)
    const title = { ...DEFAULT_DESIGN.title, name: '  ' }
    open().offerText(formatDesign({ ...DEFAULT_DESIGN, title }), 'file')
    expect(open().pending?.name).toBe('A design without a name')
  })

  it('shows at most five problems of a file', () => {
    const walls = Object.fromEntries(Array.from({ length: 12 }, (_, i) => [`x${i}`, 1]))
    open().offerText(JSON.stringify({ combwright: 1, walls }), 'file')
    // Five problems, how many more, and the promise that nothing changed.
    const lines = open().message?.text.split('\n') ?? []
    expect(lines).toHaveLength(7)
    expect(lines[5]).toBe('And 7 more.')
  })
})

describe('tooLargeMessage', () => {
  it('gives the size and the limit', () => {
    expect(tooLargeMessage(50_000_000)).toMatch(/^This is 50 MB long, .* longer than 1 MB\./)
    expect(tooLargeMessage(MAX_FILE_BYTES + 1)).toMatch(/^This is 1\.01 MB long/)
    expect(tooLargeMessage(3_200_000_000)).toMatch(/^This is 3\.2 GB long/)
  })
})
