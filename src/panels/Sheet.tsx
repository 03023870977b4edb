import type { ReactNode } from 'react'
import type { Hive } from '../hive/hive.ts'
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
import { useShortcuts } from './useShortcuts.ts'
import { ViewWindow } from './ViewWindow.tsx'

interface SheetProps {
  readonly outside: OutsideWork
  readonly drawHive: (hive: Hive) => ReactNode
}

/** The whole sheet: head, rule of stages, inputs, hive, answers, title block. */
export const Sheet = ({ outside, drawHive }: SheetProps) => {
  useShortcuts()
  useDropFile()
  return (
    <>
      <a className="skip" href="#inputs">
        Skip to the inputs
      </a>
      <main className="sheet">
        <SheetHead outside={outside} />
        <StageRule />
        <StagePanel />
        <div className="sheet-right">
          <ViewWindow drawHive={drawHive} />
          <div className="sheet-answers">
            <Answers />
            <TitleBlock />
          </div>
        </div>
      </main>
      <LiveSummary />
      <OpenDialog />
      <NoticeBar />
    </>
  )
}
