import type { PanelId } from '../../../hive/panelPlane.ts'

/** A panel within a sentence. */
export const PANEL_WORDS: Readonly<Record<PanelId, string>> = {
  'front-wall': 'the front wall',
  'back-wall': 'the back wall',
  'left-wall': 'the left end wall',
  'right-wall': 'the right end wall',
  lid: 'the lid',
  floor: 'the floor',
}
