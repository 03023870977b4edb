import '@fontsource/ibm-plex-sans/latin-400.css'
import '@fontsource/ibm-plex-sans/latin-600.css'
import './panels/styles/tokens.css'
import './panels/styles/base.css'
import './panels/styles/sheet.css'
import './panels/styles/rule.css'
import './panels/styles/inputs.css'
import './panels/styles/slider.css'
import './panels/styles/diagram.css'
import './panels/styles/answers.css'
import './panels/styles/heat.css'
import './panels/styles/heatLegend.css'
import './panels/styles/titleBlock.css'
import './panels/styles/view.css'
import './panels/styles/dialog.css'
import './panels/styles/narrow.css'
import { createRoot } from 'react-dom/client'
import { App } from './App.tsx'
import { ErrorBoundary } from './panels/ErrorBoundary.tsx'
import { startSession } from './panels/session.ts'
import { cuttingKey } from './reports/shop/cutting/cuttingKey.ts'
import { answersFor } from './store/answers.ts'
import { attachCuttingPlan } from './store/attachCuttingPlan.ts'
import { attachHeatField } from './store/attachHeatField.ts'
import { browserTimer } from './store/browserTimer.ts'
import { useCuttingPlan } from './store/cuttingPlan.ts'
import { useDesignStore } from './store/designStore.ts'
import { useHeatField } from './store/heatField.ts'
import { useSavedDesigns } from './store/savedDesigns.ts'
import { createCuttingClient } from './workers/cuttingClient.ts'
import { createFieldClient } from './workers/fieldClient.ts'

/** A plan that is not proven by then is good enough to look at; it shows its gap. */
const MOST_PLANNING_MS = 10_000

const root = document.getElementById('root')
if (root === null) throw new Error('The page has no place for the sheet.')
startSession()
attachHeatField({
  designs: useDesignStore,
  saved: useSavedDesigns,
  field: useHeatField,
  shownDesign: (design) => answersFor(design).answer?.design,
  ask: createFieldClient(),
  timer: browserTimer,
})
attachCuttingPlan({
  designs: useDesignStore,
  plans: useCuttingPlan,
  shownJobs: (design) => answersFor(design).answer?.report.shop.cutting,
  keyOf: cuttingKey,
  ask: createCuttingClient(MOST_PLANNING_MS),
  timer: browserTimer,
})
createRoot(root).render(
  <ErrorBoundary>
    <App />
  </ErrorBoundary>,
)
