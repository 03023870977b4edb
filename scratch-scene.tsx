import { createRoot } from 'react-dom/client'
import { useState, useEffect } from 'react'
import { HiveView } from './src/scene/HiveView.tsx'
import { readCounters } from './src/scene/rendererCounters.ts'
import { captureImage, captureExploded } from './src/scene/capture.ts'
import { useViewStore } from './src/store/viewStore.ts'
import { deriveHive } from './src/hive/deriveHive.ts'
import { DEFAULT_DESIGN } from './src/design/defaults.ts'
import { EXAMPLES } from './src/design/examples.ts'
Object.assign(window, { EXAMPLES })
const derive = (change: any) => { const r = deriveHive(change(DEFAULT_DESIGN)); if (r.kind !== 'built') throw new Error(JSON.stringify(r)); return r.hive }
const App = () => {
  const [hive, setHive] = useState(() => derive((d: any) => d))
  useEffect(() => { Object.assign(window, { setHive: (f: any) => setHive(derive(f)) }) }, [])
  return <HiveView hive={hive} fallback={<p>2D drawing</p>} />
}
Object.assign(window, { readCounters, captureImage, captureExploded, view: useViewStore })
createRoot(document.getElementById('root')!).render(<App />)
