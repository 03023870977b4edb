import { useState } from 'react'
import type { PaperName } from '../../sheets/pages/paper.ts'
import type { OutsideWork } from '../actions.ts'
import { FOLDED_HEAD_PX, PHONE_PX, useMaxWidth } from '../useMaxWidth.ts'
import { Brand } from './Brand.tsx'
import { ExampleButtons } from './ExampleButtons.tsx'
import { ExportItems } from './ExportItems.tsx'
import { FileActions } from './FileActions.tsx'
import { HistoryButtons } from './HistoryButtons.tsx'
import { Menu } from './Menu.tsx'
import { NameField } from './NameField.tsx'
import { ShareDialog } from './ShareDialog.tsx'
import { SheetDialog } from './SheetDialog.tsx'
import { SheetMenu } from './SheetMenu.tsx'
import { UnitSwitch } from './UnitSwitch.tsx'

/** The head of the sheet: the name, and what is done with the design as a whole. */
export const SheetHead = ({ outside }: { readonly outside: OutsideWork }) => {
  const isFolded = useMaxWidth(FOLDED_HEAD_PX)
  const isPhone = useMaxWidth(PHONE_PX)
  const [isSharing, setSharing] = useState(false)
  const [paper, setPaper] = useState<PaperName>()
  const share = () => setSharing(true)
  return (
    <header className="sheet-head">
      <Brand />
      <NameField />
      <HistoryButtons />
      <UnitSwitch />
      <div className="head-actions">
        {isFolded ? (
          <Menu name="Design">
            <FileActions onShare={share} />
            {isPhone && <ExportItems outside={outside} />}
            <p className="menu-heading">Examples</p>
            <ExampleButtons />
          </Menu>
        ) : (
          <>
            <Menu name="Examples">
              <ExampleButtons />
            </Menu>
            <FileActions look="plain" onShare={share} />
          </>
        )}
        {!isPhone && (
          <Menu name="Export">
            <ExportItems outside={outside} />
          </Menu>
        )}
        <SheetMenu onBuild={setPaper} />
      </div>
      {isSharing && <ShareDialog onClose={() => setSharing(false)} />}
      {paper && (
        <SheetDialog
          paper={paper}
          buildSheet={outside.buildSheet}
          onClose={() => setPaper(undefined)}
        />
      )}
    </header>
  )
}
