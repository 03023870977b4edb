import { useState } from 'react'
import type { PaperName } from '../../sheets/pages/paper.ts'
import type { OutsideWork } from '../actions.ts'
import { Brand } from './Brand.tsx'
import { ExampleButtons } from './ExampleButtons.tsx'
import { FileActions } from './FileActions.tsx'
import { HistoryButtons } from './HistoryButtons.tsx'
import { Menu } from './Menu.tsx'
import { NameField } from './NameField.tsx'
import { PictureMenu } from './PictureMenu.tsx'
import { ShareDialog } from './ShareDialog.tsx'
import { SheetDialog } from './SheetDialog.tsx'
import { SheetMenu } from './SheetMenu.tsx'
import { UnitSwitch } from './UnitSwitch.tsx'
import { useIsNarrow } from './useIsNarrow.ts'

/** The head of the sheet: the name, and what is done with the design as a whole. */
export const SheetHead = ({ outside }: { readonly outside: OutsideWork }) => {
  const isNarrow = useIsNarrow()
  const [isSharing, setSharing] = useState(false)
  const [paper, setPaper] = useState<PaperName>()
  const share = () => setSharing(true)
  return (
    <header className="sheet-head">
      <Brand />
      <NameField />
      <HistoryButtons />
      <UnitSwitch />
      {isNarrow ? (
        <div className="head-actions">
          <Menu name="Design">
            <FileActions onShare={share} />
            <h3>Examples</h3>
            <ExampleButtons />
          </Menu>
          <PictureMenu outside={outside} />
          <SheetMenu onBuild={setPaper} />
        </div>
      ) : (
        <div className="head-actions">
          <Menu name="Examples">
            <ExampleButtons />
          </Menu>
          <FileActions look="plain" onShare={share} />
          <PictureMenu outside={outside} />
          <SheetMenu onBuild={setPaper} />
        </div>
      )}
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
