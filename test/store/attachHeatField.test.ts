import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import type { Design } from '../../src/design/schema.ts'
import { setField } from '../../src/design/setField.ts'
import type { HeatComparisons } from '../../src/reports/heat/field/heatComparisons.ts'
import type { HeatFieldAnswer } from '../../src/reports/heat/field/heatFieldAnswer.ts'
import { attachHeatField } from '../../src/store/attachHeatField.ts'
import { useDesignStore } from '../../src/store/designStore.ts'
import { useHeatField } from '../../src/store/heatField.ts'
import { useSavedDesigns } from '../../src/store/savedDesigns.ts'
import type { HeatJob, HeatResult } from '../../src/workers/fieldMessages.ts'

let detach = () => {}
afterEach(() => {
  detach()
  useDesignStore.setState(useDesignStore.getInitialState(), true)
  useHeatField.setState(useHeatField.getInitialState(), true)
  useSavedDesigns.setState(useSavedDesigns.getInitialState(), true)
})

/** What was asked, in words: `preview 61`, by the thickness of the walls' insulation. */
let asked: string[]
let cancelled: string[]
let underWay: { readonly job: HeatJob; readonly tell: (result: HeatResult) => void } | undefined
/** What waits for the design to rest, and how long each waits. */
let waiting: Map<() => void, number>
const unbuildable = new Set<number>()

beforeEach(() => {
  asked = []
  cancelled = []
  underWay = undefined
  waiting = new Map()
  unbuildable.clear()
})

const coreOf = (design: Design): number => design.walls.coreMm

const nameOf = (job: HeatJob): string =>
  `${job.kind === 'field' ? job.quality : 'comparisons'} ${coreOf(job.design)}`

const attach = () => {
  let lastShown: Design | undefined
  detach = attachHeatField({
    designs: useDesignStore,
    saved: useSavedDesigns,
    field: useHeatField,
    shownDesign: (design) => {
      if (!unbuildable.has(coreOf(design))) lastShown = design
      return lastShown
    },
    ask: (job, tell) => {
      asked.push(nameOf(job))
      const own = { job, tell }
      underWay = own
      return () => {
        cancelled.push(nameOf(job))
        if (underWay === own) underWay = undefined
      }
    },
    timer: (call, delayMs) => {
      waiting.set(call, delayMs)
      return () => waiting.delete(call)
    },
  })
}

/** The design has been at rest for so long; long enough for everything if left out. */
const rest = (ms = Number.POSITIVE_INFINITY) => {
  for (const [call, delayMs] of [...waiting]) {
    if (delayMs > ms) continue
    waiting.delete(call)
    call()
  }
}

/** The solver ends what it was asked last. */
const finish = (failure?: string) => {
  if (underWay === undefined) throw new Error('Nothing is under way.')
  const { job, tell } = underWay
  underWay = undefined
  if (failure !== undefined) return tell({ kind: 'failed', message: failure })
  if (job.kind === 'comparisons') return tell({ kind: 'comparisons', comparisons: COMPARISONS })
  const answer = { quality: job.quality } as HeatFieldAnswer
  tell({ kind: 'field', answer })
}

const COMPARISONS: HeatComparisons = { remedies: [], baselines: [] }

const setCore = (mm: number) =>
  useDesignStore.getState().edit((design) => setField(design, 'walls.coreMm', mm).design)

/** Attached, and everything known of the first design, whose walls hold 60 mm. */
const attachAtRest = () => {
  attach()
  rest()
  for (let i = 0; i < 3; i += 1) finish()
  asked = []
}

const state = () => useHeatField.getState()

describe('attachHeatField', () => {
  it('asks nothing while the page opens, then for a first look, the full answer, comparisons', () => {
    attach()
    expect(asked).toEqual([])
    expect(state().isWorking).toBe(true)
    rest()
    expect(asked).toEqual(['preview 60'])
    finish()
    expect(state().answer?.quality).toBe('preview')
    expect(state().isWorking).toBe(true)
    finish()
    expect(state()).toMatchObject({ isWorking: false, answer: { quality: 'full' } })
    expect(state().answerDesign).toBe(useDesignStore.getState().design)
    finish()
    expect(asked).toEqual(['preview 60', 'full 60', 'comparisons 60'])
    expect(state().comparisons).toBe(COMPARISONS)
    expect(state().comparisonsDesign).toBe(useDesignStore.getState().design)
    expect(underWay).toBeUndefined()
  })

  it('gives previews of the newest state during a drag, and never has more than one to do', () => {
    attachAtRest()
    useDesignStore.getState().beginGesture()
    for (const mm of [61, 62, 63, 64]) setCore(mm)
    expect(asked).toEqual(['preview 61'])
    finish()
    expect(asked).toEqual(['preview 61', 'preview 64'])
    finish()
    expect(asked).toHaveLength(2)
    expect(cancelled).toEqual([])
    expect(state().answerDesign?.walls.coreMm).toBe(64)
  })

  it('asks for the full answer when the design has been at rest, be the gesture over or not', () => {
    attachAtRest()
    useDesignStore.getState().beginGesture()
    setCore(61)
    setCore(62)
    // One timer for the full answer, one for the comparisons, however many edits there were.
    expect(waiting.size).toBe(2)
    finish()
    finish()
    rest()
    expect(asked).toEqual(['preview 61', 'preview 62', 'full 62'])
    useDesignStore.getState().commitGesture()
    expect(cancelled).toEqual([])
    finish()
    expect(asked.at(-1)).toBe('comparisons 62')
  })

  it('keeps the older answer, and says what it is about, until there is a newer one', () => {
    attachAtRest()
    const before = useDesignStore.getState().design
    setCore(70)
    expect(state()).toMatchObject({ isWorking: true, answer: { quality: 'full' } })
    expect(state().answerDesign).toBe(before)
    expect(state().comparisonsDesign).toBe(before)
  })

  it('leaves comparisons until the design has been at rest for longer', () => {
    attachAtRest()
    setCore(61)
    finish()
    rest(300)
    finish()
    expect(asked).toEqual(['preview 61', 'full 61'])
    rest(2000)
    expect(asked).toEqual(['preview 61', 'full 61', 'comparisons 61'])
  })

  it('cancels a full answer and comparisons as soon as the design changes', () => {
    attachAtRest()
    setCore(61)
    finish()
    rest()
    setCore(62)
    expect(cancelled).toEqual(['full 61'])
    finish()
    rest()
    finish()
    expect(asked.at(-1)).toBe('comparisons 62')
    setCore(63)
    expect(cancelled).toEqual(['full 61', 'comparisons 62'])
    expect(asked.at(-1)).toBe('preview 63')
  })

  it('lets a slow preview of the present design come to its end, but not one of an older design', () => {
    attachAtRest()
    setCore(61)
    rest()
    expect(cancelled).toEqual([])
    finish()
    expect(asked).toEqual(['preview 61', 'full 61'])
    finish()
    finish()
    setCore(62)
    setCore(63)
    rest()
    expect(cancelled).toEqual(['preview 62'])
    expect(asked.at(-1)).toBe('full 63')
  })

  it('asks nothing when only the title changed', () => {
    attachAtRest()
    useDesignStore.getState().edit((d) => ({ ...d, title: { ...d.title, name: 'Another' } }))
    rest()
    expect(asked).toEqual([])
    const { design } = useDesignStore.getState()
    expect(state()).toMatchObject({ isWorking: false })
    expect(state().answerDesign).toBe(design)
    expect(state().comparisonsDesign).toBe(design)
  })

  it('has the full answer back at once when a drag ends where it began', () => {
    attachAtRest()
    const full = state().answer
    useDesignStore.getState().beginGesture()
    setCore(61)
    finish()
    setCore(62)
    setCore(60)
    useDesignStore.getState().commitGesture()
    expect(cancelled).toEqual(['preview 62'])
    expect(state()).toMatchObject({ isWorking: false })
    expect(state().answer).toBe(full)
    expect(state().answerDesign).toBe(useDesignStore.getState().design)
    rest()
    expect(asked).toEqual(['preview 61', 'preview 62'])
  })

  it('stays with the hive that is shown while the design can not be built', () => {
    attachAtRest()
    unbuildable.add(99)
    setCore(99)
    rest()
    expect(asked).toEqual([])
    expect(state()).toMatchObject({ isWorking: false, problem: undefined })
  })

  it('tells why there is no answer, and asks again only when the design changes', () => {
    attachAtRest()
    setCore(61)
    finish('The hive has no matter.')
    rest()
    expect(asked).toEqual(['preview 61'])
    expect(state()).toMatchObject({ isWorking: false, problem: 'The hive has no matter.' })
    setCore(62)
    expect(state()).toMatchObject({ isWorking: true, problem: undefined })
    expect(asked.at(-1)).toBe('preview 62')
  })

  it('leaves the answer alone when only the comparisons fail, and does not try again', () => {
    attach()
    rest()
    finish()
    finish()
    finish('No memory.')
    rest()
    expect(asked).toHaveLength(3)
    expect(state()).toMatchObject({ comparisons: undefined, problem: undefined, isWorking: false })
  })

  it('compares again when the list of saved designs changes', () => {
    attachAtRest()
    useSavedDesigns.getState().add(useDesignStore.getState().design)
    expect(asked).toEqual(['comparisons 60'])
    expect(underWay?.job).toMatchObject({ others: useSavedDesigns.getState().saved })
    useSavedDesigns.getState().dismissMessage()
    expect(cancelled).toEqual([])
  })

  it('cancels and follows no longer once detached', () => {
    attachAtRest()
    setCore(61)
    detach()
    expect(cancelled).toEqual(['preview 61'])
    setCore(62)
    rest()
    expect(asked).toEqual(['preview 61'])
  })
})
