import type { Paper } from '../actions.ts'
import { Menu } from './Menu.tsx'

/** The build sheet, on the paper that the person's printer holds. */
export const SheetMenu = ({ onBuild }: { readonly onBuild: (paper: Paper) => void }) => (
  <Menu name="Build sheet" strong>
    <button type="button" onClick={() => onBuild('A4')}>
      PDF on A4
      <small>Drawings, cut list and figures</small>
    </button>
    <button type="button" onClick={() => onBuild('Letter')}>
      PDF on Letter
      <small>The same, on US paper</small>
    </button>
  </Menu>
)
