import { useMemo } from 'react'
import type { CutListRow } from '../../reports/shop/computeShop.ts'
import { useViewStore } from '../../store/viewStore.ts'

/** Choosing rows of the cut list by their labels, linked with the choice in the hive. */
export interface RowChoice {
  readonly chosen: ReadonlySet<string>
  /** Picks the parts of a row out in the hive, or lets them go. */
  readonly toggle: (label: string) => void
}

export const useChooseRow = (cutList: readonly CutListRow[]): RowChoice => {
  const selected = useViewStore((s) => s.selectedPartIds)
  const select = useViewStore((s) => s.select)
  return useMemo(() => {
    const ids = new Set(selected)
    const chosen = new Set(
      cutList.filter((row) => row.partIds.some((id) => ids.has(id))).map((row) => row.label),
    )
    const toggle = (label: string) => {
      const row = cutList.find((r) => r.label === label)
      select(row === undefined || chosen.has(label) ? [] : row.partIds)
    }
    return { chosen, toggle }
  }, [cutList, selected, select])
}
