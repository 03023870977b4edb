import type { StoreApi } from 'zustand'
import type { Design } from '../design/schema.ts'
import type { AskHeat } from '../workers/fieldClient.ts'
import type { HeatJob, HeatResult } from '../workers/fieldMessages.ts'
import type { Timer } from './attachAutosave.ts'
import type { HeatFieldState } from './heatField.ts'
import type { DesignState } from './history.ts'
import { isSameHeat } from './isSameHeat.ts'
import type { SavedState } from './savedDesigns.ts'

export interface HeatFieldOptions {
  readonly designs: Pick<StoreApi<DesignState>, 'getState' | 'subscribe'>
  readonly saved: Pick<StoreApi<SavedState>, 'getState' | 'subscribe'>
  readonly field: Pick<StoreApi<HeatFieldState>, 'getState' | 'setState'>
  /** The design that the page shows: the last one that could be built. */
  readonly shownDesign: (design: Design) => Design | undefined
  readonly ask: AskHeat
  readonly timer: Timer
  /** So long after the last change the design is at rest, and asked about in full. */
  readonly restMs?: number
  /** So long after it, there is time for comparisons, which take the longest. */
  readonly calmMs?: number
}

/**
 * Keeps the heat of the shown design up to date: a preview while it changes, the full answer when it
 * rests, and then the comparisons. One question at a time: what is no longer wanted is cancelled, save
 * a preview, which is soon done and would else never come while a drag goes on. Returns how to stop.
 */
export const attachHeatField = (options: HeatFieldOptions): (() => void) => {
  const { designs, saved, field, shownDesign, ask, timer, restMs = 250, calmMs = 1500 } = options
  let wanted: Design | undefined
  let isResting = false
  let isCalm = false
  let callOffRest = () => {}
  let running: { readonly job: HeatJob; readonly cancel: () => void } | undefined
  /** What failed is not asked again while nothing changes. */
  let failed: HeatJob | undefined
  let lastFull: Pick<HeatFieldState, 'answer' | 'answerDesign'> | undefined
  let compared: Extract<HeatJob, { kind: 'comparisons' }> | undefined

  const nextJob = (): HeatJob | undefined => {
    if (wanted === undefined) return undefined
    const { answer, answerDesign } = field.getState()
    const known = answerDesign === wanted ? answer?.quality : undefined
    if (known === 'full') return isCalm ? nextComparisons(wanted) : undefined
    if (failed?.design === wanted) return undefined
    // The first figures of a visit come as soon as they can.
    const quality = isResting && answer !== undefined ? 'full' : 'preview'
    return quality === known ? undefined : { kind: 'field', design: wanted, quality }
  }
  const nextComparisons = (design: Design): HeatJob | undefined => {
    const others = saved.getState().saved
    const isCompared = compared?.design === design && compared.others === others
    return isCompared ? undefined : { kind: 'comparisons', design, others }
  }

  const goOn = (): void => {
    const job = nextJob()
    if (running !== undefined) {
      if (job !== undefined && isWorthFinishing(running.job, job)) return
      running.cancel()
      running = undefined
    }
    if (job !== undefined) start(job)
  }

  const start = (job: HeatJob): void => {
    const cancel = ask(job, (result) => {
      running = undefined
      take(job, result)
      goOn()
    })
    running = { job, cancel }
  }

  const take = (job: HeatJob, result: HeatResult): void => {
    if (result.kind === 'field') {
      const isFull = result.answer.quality === 'full'
      if (isFull) lastFull = { answer: result.answer, answerDesign: job.design }
      const isDone = isFull && job.design === wanted
      field.setState({
        answer: result.answer,
        answerDesign: job.design,
        ...(isDone && { isWorking: false }),
      })
    } else if (job.kind === 'comparisons') {
      compared = job
      if (result.kind !== 'comparisons') return
      field.setState({ comparisons: result.comparisons, comparisonsDesign: job.design })
    } else if (result.kind === 'failed' && job.design === wanted) {
      failed = job
      field.setState({ isWorking: false, problem: result.message })
    }
  }

  const waitForRest = (): void => {
    isResting = false
    isCalm = false
    const rest = timer(() => {
      isResting = true
      goOn()
    }, restMs)
    const calm = timer(() => {
      isCalm = true
      goOn()
    }, calmMs)
    callOffRest = () => {
      rest()
      calm()
    }
  }

  const follow = (): void => {
    const shown = shownDesign(designs.getState().design)
    if (shown === wanted) return
    const isFirst = wanted === undefined
    wanted = shown
    callOffRest()
    waitForRest()
    passOn()
    const { answer, answerDesign } = field.getState()
    const isWorking =
      wanted !== undefined && !(answerDesign === wanted && answer?.quality === 'full')
    field.setState({ isWorking, problem: undefined })
    // A page that has just been opened has better things to do than to look at heat.
    if (!isFirst) goOn()
  }

  /** What is known of a design holds as well for one that differs in nothing that matters to heat. */
  const passOn = (): void => {
    const holds = (known: Design | undefined): boolean =>
      known !== undefined && wanted !== undefined && isSameHeat(known, wanted)
    const { answerDesign, comparisonsDesign } = field.getState()
    if (holds(lastFull?.answerDesign)) field.setState({ ...lastFull, answerDesign: wanted })
    else if (holds(answerDesign)) field.setState({ answerDesign: wanted })
    if (holds(comparisonsDesign)) field.setState({ comparisonsDesign: wanted })
    if (compared !== undefined && wanted !== undefined && holds(compared.design)) {
      compared = { ...compared, design: wanted }
    }
  }

  const stopDesigns = designs.subscribe(follow)
  const stopSaved = saved.subscribe((state, before) => {
    if (state.saved !== before.saved) goOn()
  })
  follow()
  return () => {
    stopDesigns()
    stopSaved()
    callOffRest()
    running?.cancel()
  }
}

/** Whether what runs should run on although `next` is what is wanted now. */
const isWorthFinishing = (running: HeatJob, next: HeatJob): boolean => {
  if (running.kind === 'comparisons') {
    return (
      next.kind === 'comparisons' &&
      next.design === running.design &&
      next.others === running.others
    )
  }
  if (next.kind === 'comparisons') return false
  if (running.quality === 'preview' && next.quality === 'preview') return true
  return running.design === next.design
}
