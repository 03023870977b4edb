import { materialById } from '../../catalog/materials.ts'
import type { PanelSummary } from '../../hive/hive.ts'
import { formatLength } from '../../units/length.ts'
import type { UnitPreferences } from '../../units/preferences.ts'

const SHORT: Readonly<Record<PanelSummary['id'], string>> = {
  'front-wall': 'Walls',
  'back-wall': 'Walls',
  'left-wall': 'Walls',
  'right-wall': 'Walls',
  lid: 'Lid',
  floor: 'Floor',
}

/** The layers of one panel as table rows: panel (once), layer, thickness. */
export const panelRows = (
  panel: PanelSummary,
  units: UnitPreferences,
): readonly (readonly string[])[] => {
  const name = (id: string) => materialById(id).name
  const show = (mm: number) => formatLength(mm, units.length)
  const { lining, core, cladding } = panel
  return [
    [SHORT[panel.id], name(lining.material), show(lining.thickness)],
    ['', `${name(core.insulation)}; rails: ${name(core.timber)}`, show(core.thickness)],
    ['', name(cladding.material), show(cladding.thickness)],
  ]
}
