import { lazy, type ReactNode, Suspense } from 'react'
import type { Hive } from '../hive/hive.ts'
import { useBench } from '../store/bench.ts'
import type { OutsideWork } from './actions.ts'
import { Answers } from './answers/Answers.tsx'
import { OpenDialog } from './header/OpenDialog.tsx'
import { SheetHead } from './header/SheetHead.tsx'
import { StagePanel } from './inputs/StagePanel.tsx'
import { StageRule } from './inputs/StageRule.tsx'
import { LiveSummary } from './LiveSummary.tsx'
import { NoticeBar } from './NoticeBar.tsx'
import { TitleBlock } from './TitleBlock.tsx'
import { useDropFile } from './useDropFile.ts'
import { FOLDED_HEAD_PX, PHONE_PX, useMaxWidth } from './useMaxWidth.ts'
import { useShortcuts } from './useShortcuts.ts'
import { ViewWindow } from './ViewWindow.tsx'

const Bench = lazy(async () => ({ default: (await import('./workshop/bench/Bench.tsx')).Bench }))

interface SheetProps {
  readonly outside: OutsideWork
  readonly drawHive: (hive: Hive) => ReactNode
}

/** The whole sheet: head, rule of stages, inputs, hive, answers, title block. */
export const Sheet = ({ outside, drawHive }: SheetProps) => {
  useShortcuts()
  useDropFile()
  const isPhone = useMaxWidth(PHONE_PX)
  const isNarrow = useMaxWidth(FOLDED_HEAD_PX)
  const isAtBench = useBench((s) => s.isOpen)
  const view = <ViewWindow drawHive={drawHive} isCovered={isAtBench} />
  const answers = (
    <div className="sheet-answers">
      <Answers />
      <TitleBlock />
    </div>
  )
  return (
    <>
      <a className="skip" href={isAtBench ? '#bench' : '#inputs'}>
        Skip to the {isAtBench ? 'bench' : 'inputs'}
      </a>
      <main className="sheet">
        <SheetHead outside={outside} />
        {/* In one column the hive comes first; the Tab key must go as the eye does. */}
        {isPhone && view}
        <StageRule />
        <StagePanel isCovered={isAtBench} />
        {isAtBench && (
          <Suspense>
            <Bench />
          </Suspense>
        )}
        {isPhone ? (
          answers
        ) : (
          <div className="sheet-right" inert={isAtBench && isNarrow}>
            {view}
            {answers}
          </div>
        )}
      </main>
      <LiveSummary />
      <OpenDialog />
      <NoticeBar />
    </>
  )
}
