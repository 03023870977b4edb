import { lazy, Suspense } from 'react'
import type { Hive } from './hive/hive.ts'
import type { OutsideWork } from './panels/actions.ts'
import { Sheet } from './panels/Sheet.tsx'
import { FlatHive } from './panels/view/FlatHive.tsx'

const HiveView = lazy(async () => ({ default: (await import('./scene/HiveView.tsx')).HiveView }))

const drawHive = (hive: Hive) => (
  <Suspense fallback={<p className="view-empty">Drawing the hive</p>}>
    <HiveView hive={hive} fallback={<FlatHive hive={hive} />} />
  </Suspense>
)

const OUTSIDE: OutsideWork = {
  drawPicture: async (picture) => {
    const { captureImage } = await import('./scene/capture.ts')
    return captureImage(picture)
  },
  buildSheet: () => ({ result: Promise.reject(new Error('not yet')), cancel: () => {} }),
  buildCutListCsv: () => '',
}

/** Where all meet: the panels, the scene, the workers. */
export const App = () => <Sheet outside={OUTSIDE} drawHive={drawHive} />
