import type { PaperName } from '../../sheets/pages/paper.ts'
import { Menu } from './Menu.tsx'

export const PAPER_NAMES: Readonly<Record<PaperName, string>> = { a4: 'A4', letter: 'Letter' }

/** The build sheet, on the paper that the person's printer holds. */
export const SheetMenu = ({ onBuild }: { readonly onBuild: (paper: PaperName) => void }) => (
  <Menu name="Build sheet" strong>
    <button type="button" onClick={() => onBuild('a4')}>
      PDF on {PAPER_NAMES.a4}
      <small>Drawings, cut list, checks and figures</small>
    </button>
    <button type="button" onClick={() => onBuild('letter')}>
      PDF on {PAPER_NAMES.letter}
      <small>The same, on US paper</small>
    </button>
  </Menu>
)
