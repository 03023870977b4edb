import { lazy, Suspense } from 'react'
import type { Hive } from './hive/hive.ts'
import type { Job, OutsideWork } from './panels/actions.ts'
import { Sheet } from './panels/Sheet.tsx'
import { FlatHive } from './panels/view/FlatHive.tsx'
import type { AssemblyReport } from './reports/shop/assembly/assemblyReport.ts'
import type { SheetPicture } from './sheets/pages/sheetPage.ts'
import { answersFor } from './store/answers.ts'
import { browserTimer } from './store/browserTimer.ts'
import { useCuttingPlan } from './store/cuttingPlan.ts'
import { useDesignStore } from './store/designStore.ts'
import { useHeatField } from './store/heatField.ts'
import { isCuttingKnown, isHeatKnown } from './store/knownEnough.ts'
import { useViewStore } from './store/viewStore.ts'
import { waitUntil } from './store/waitUntil.ts'
import type { WholeAnswer } from './store/wholeAnswer.ts'
import { buildSheetInWorker, SHEET_CANCELLED, type SheetRequest } from './workers/sheetClient.ts'

declare global {
  interface Window {
    /** For tests: what the renderer did last. */
    __combwright?: Pick<typeof import('./scene/rendererCounters.ts'), 'readCounters'>
  }
}

const HiveView = lazy(async () => {
  const [{ HiveView }, { readCounters }] = await Promise.all([
    import('./scene/HiveView.tsx'),
    import('./scene/rendererCounters.ts'),
  ])
  window.__combwright = { readCounters }
  return { default: HiveView }
})

const drawHive = (hive: Hive) => (
  <Suspense fallback={<p className="view-empty">Drawing the hive</p>}>
    <HiveView hive={hive} fallback={<FlatHive hive={hive} />} />
  </Suspense>
)

/** A picture of the hive taken apart, for the first sheet; none without a 3D view. */
const drawForSheet = async (): Promise<SheetPicture | undefined> => {
  const { captureExploded } = await import('./scene/capture.ts')
  const size = { widthPx: 1500, heightPx: 1100 }
  const wish = { ...size, explode: 1, preset: 'three-quarter', type: 'image/jpeg' } as const
  const bytes = await captureExploded(wish)
  return bytes && { bytes, ...size, kind: 'jpeg' }
}

const STEP_SIZE = { widthPx: 880, heightPx: 640 }

/** A picture of each step of assembly, one after the other, so that the page can answer in between. */
const drawSteps = async (
  assembly: AssemblyReport,
  isCancelled: () => boolean,
): Promise<readonly (SheetPicture | undefined)[]> => {
  const [{ captureStep }, { stepPicture }] = await Promise.all([
    import('./scene/capture.ts'),
    import('./reports/shop/assembly/stepPicture.ts'),
  ])
  const pictures: (SheetPicture | undefined)[] = []
  for (const index of assembly.steps.keys()) {
    if (isCancelled()) break
    const shown = stepPicture(assembly, index)
    const hasNew = shown !== undefined && shown.fresh.length > 0
    const bytes = hasNew ? await captureStep({ ...shown, ...STEP_SIZE }) : undefined
    pictures.push(bytes && { bytes, ...STEP_SIZE, kind: 'jpeg' })
  }
  return pictures
}

/** Heat and cutting plans are worth waiting for, but not for ever: the sheet can do without. */
const PATIENCE = { timer: browserTimer, mostMs: 10_000 }

/** What the sheet says: the hive as it is now, with its heat and its plans once they are known. */
const gatherForSheet = async (): Promise<WholeAnswer & Pick<SheetRequest, 'comparisons'>> => {
  const { answer } = answersFor(useDesignStore.getState().design)
  if (answer === undefined) throw new Error('There is no hive that can be built yet.')
  const { design, hive } = answer
  await Promise.all([
    waitUntil(isHeatKnown(design), { ...PATIENCE, store: useHeatField }),
    waitUntil(isCuttingKnown(answer.report.shop.cutting), { ...PATIENCE, store: useCuttingPlan }),
  ])
  const { answer: field, answerDesign, comparisons, comparisonsDesign } = useHeatField.getState()
  const isFull = answerDesign === design && field?.quality === 'full'
  const { plan } = useCuttingPlan.getState()
  const { runWholeReports } = await import('./reports/wholeReport.ts')
  const report = runWholeReports(design, hive, isFull ? field : undefined, plan)
  return {
    design,
    hive,
    report,
    ...(comparisonsDesign === design && comparisons && { comparisons }),
  }
}

const buildSheet: OutsideWork['buildSheet'] = (paper, onProgress): Job => {
  const gathered = gatherForSheet()
  const { units } = useViewStore.getState()
  // Swedish dates are written year, month, day, as ISO 8601 has them.
  const date = new Intl.DateTimeFormat('sv-SE').format(new Date())
  let stop = () => {}
  let isCancelled = false
  const run = async (): Promise<Blob> => {
    const [content, picture] = await Promise.all([gathered, drawForSheet()])
    const stepPictures = await drawSteps(content.report.shop.assembly, () => isCancelled)
    if (isCancelled) throw new Error(SHEET_CANCELLED)
    const input = { ...content, units, paper, date, stepPictures, ...(picture && { picture }) }
    const job = buildSheetInWorker(input, onProgress)
    stop = job.cancel
    return new Blob([new Uint8Array(await job.result)], { type: 'application/pdf' })
  }
  const cancel = () => {
    isCancelled = true
    stop()
  }
  return { result: run(), cancel }
}

const OUTSIDE: OutsideWork = {
  drawPicture: async (picture) => (await import('./scene/capture.ts')).captureImage(picture),
  buildSheet,
}

/** Where all meet: the panels, the scene, the workers. */
export const App = () => <Sheet outside={OUTSIDE} drawHive={drawHive} />
