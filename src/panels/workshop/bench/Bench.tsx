import '../../styles/bench.css'
import '../../styles/benchTables.css'
import '../../styles/cutting.css'
import '../../styles/labels.css'
import '../../styles/setUps.css'
import { useRef } from 'react'
import { type BenchSheet, useBench } from '../../../store/bench.ts'
import { type Tab, Tabs } from '../../answers/Tabs.tsx'
import { PHONE_PX, useMaxWidth } from '../../useMaxWidth.ts'
import { BoardsSheet } from '../boards/BoardsSheet.tsx'
import { SheetsSheet } from '../cutSheets/SheetsSheet.tsx'
import { FastenersSheet } from '../fasteners/FastenersSheet.tsx'
import { LabelsSheet } from '../labels/LabelsSheet.tsx'
import { SetUpsSheet } from '../setups/SetUpsSheet.tsx'
import { ShoppingSheet } from '../shopping/ShoppingSheet.tsx'
import { useWorkshop } from '../useWorkshop.ts'
import { ChosenLine } from './ChosenLine.tsx'
import { useEscape } from './useEscape.ts'
import { useShown } from './useShown.ts'

/** A wide sheet over the middle of the page with all that is taken to the saw. Escape puts it away. */
export const Bench = () => {
  const sheet = useBench((s) => s.sheet)
  const open = useBench((s) => s.open)
  const close = useBench((s) => s.close)
  const answer = useWorkshop()
  const dialog = useRef<HTMLDialogElement>(null)
  const isPhone = useMaxWidth(PHONE_PX)
  useShown(dialog, answer !== undefined, isPhone)
  useEscape(close)
  if (answer === undefined) return null
  const { shop } = answer.report
  const tabs: readonly (Tab & { readonly id: BenchSheet })[] = [
    { id: 'boards', name: 'Boards', content: <BoardsSheet answer={answer} /> },
    { id: 'sheets', name: 'Sheets', content: <SheetsSheet answer={answer} /> },
    { id: 'set-ups', name: 'Set-ups', content: <SetUpsSheet shop={shop} /> },
    { id: 'fasteners', name: 'Fasteners', content: <FastenersSheet shop={shop} /> },
    { id: 'shopping', name: 'Shopping', content: <ShoppingSheet shopping={shop.shopping} /> },
    { id: 'labels', name: 'Labels', content: <LabelsSheet answer={answer} /> },
  ]
  return (
    <dialog
      ref={dialog}
      className="bench"
      id="bench"
      aria-label="The bench"
      onCancel={(e) => {
        e.preventDefault()
        close()
      }}
    >
      <h2 className="hidden-text">The bench</h2>
      <h3 className="hidden-text">{tabs.find(({ id }) => id === sheet)?.name}</h3>
      <Tabs
        name="The bench"
        tabs={tabs}
        chosen={sheet}
        onChoose={(id) => {
          const tab = tabs.find((t) => t.id === id)
          if (tab) open(tab.id)
        }}
      />
      <button type="button" className="plain bench-close" onClick={close}>
        Close
      </button>
      <ChosenLine cutList={shop.cutList} />
    </dialog>
  )
}
