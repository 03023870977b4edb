import { afterEach, describe, expect, it } from 'vitest'
import { isClosedUp, useViewStore } from '../../src/store/viewStore.ts'

const START = useViewStore.getInitialState()
const view = () => useViewStore.getState()

afterEach(() => useViewStore.setState(START, true))

describe('toggleHeat', () => {
  it('starts with the outer skin when the hive is closed, with all when it is not', () => {
    view().toggleHeat()
    expect(view()).toMatchObject({ showHeat: true, heatScale: 'outside' })
    useViewStore.setState({ ...START, sectionAxis: 'x' }, true)
    view().toggleHeat()
    expect(view()).toMatchObject({ showHeat: true, heatScale: 'whole' })
  })

  it('leaves the scale to the person from then on', () => {
    view().toggleHeat()
    view().set({ heatScale: 'whole' })
    view().toggleHeat()
    expect(view()).toMatchObject({ showHeat: false, heatScale: 'whole' })
    view().toggleHeat()
    expect(view()).toMatchObject({ showHeat: true, heatScale: 'whole' })
    view().set({ heatScale: 'outside' })
    view().set({ lidOpen: 1, sectionAxis: 'z' })
    expect(view().heatScale).toBe('outside')
  })

  it('takes the reading away', () => {
    view().set({ showHeat: true, heatProbe: { share: 0.5, partId: 'wall' } })
    view().toggleHeat()
    expect(view().heatProbe).toBeUndefined()
  })
})

describe('isClosedUp', () => {
  it('is so until something is opened, cut, lifted or taken apart', () => {
    expect(isClosedUp(START)).toBe(true)
    for (const change of [
      { lidOpen: 0.5 },
      { floorOpen: 1 },
      { explode: 1 },
      { frameLift: 0.2 },
      { sectionAxis: 'z' } as const,
    ]) {
      expect(isClosedUp({ ...START, ...change })).toBe(false)
    }
  })
})

describe('showStep', () => {
  it('shows a step and looks at it, also when it is asked for twice', () => {
    view().set(START)
    view().showStep({ solid: ['a'], fresh: ['b'], view: 'inside' })
    const { serial } = view().camera
    expect(view().assembly).toEqual({ solid: ['a'], fresh: ['b'] })
    expect(view().camera.preset).toBe('inside')
    view().showStep({ solid: ['a'], fresh: ['b'], view: 'inside' })
    expect(view().camera.serial).toBe(serial + 1)
  })
})
