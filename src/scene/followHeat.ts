import type { Design } from '../design/schema.ts'
import { heatRange } from '../reports/heat/field/heatRange.ts'
import type { FieldGrid } from '../solvers/conduction/fieldGrid.ts'
import { useDesignStore } from '../store/designStore.ts'
import { useHeatField } from '../store/heatField.ts'
import { useViewStore } from '../store/viewStore.ts'
import { freshAfter } from './heatFade.ts'
import type { HeatLayer } from './heatLayer.ts'
import { shareAt } from './heatShare.ts'
import type { Hit } from './pickPart.ts'

/** The stage's part in heat: keeps the layer fed and reads off temperatures. */
export interface HeatFollower {
  /** Moves a fade on; true while it needs another frame. */
  readonly advance: () => boolean
  /** Reads the temperature of what the pointer is over, while heat is shown. */
  readonly probe: (hit: Hit | undefined) => void
  readonly dispose: () => void
}

/** Joins the layer to the newest answer of the solver, the design and the units. */
export const followHeat = (
  layer: HeatLayer,
  view: { readonly invalidate: () => void; readonly isStill: () => boolean },
): HeatFollower => {
  let grid: FieldGrid | undefined
  let design: Design | undefined
  let warmestOutsideShare = 1
  let staleSinceMs: number | undefined
  let over: Hit | undefined

  const writeRanges = (): void => {
    if (design === undefined) return
    const question = {
      outsideC: design.site.coldNightC,
      insideC: design.colony.cavityAirC,
      warmestOutsideShare,
      unit: useViewStore.getState().units.temperature,
    }
    layer.setRanges({
      whole: heatRange('whole', question),
      outside: heatRange('outside', question),
    })
  }
  const writeProbe = (): void => {
    const { showHeat, heatProbe, assembly, set } = useViewStore.getState()
    const partId = over?.part.id
    const share =
      showHeat && assembly === undefined && grid !== undefined && over !== undefined
        ? shareAt(grid, over.closedPoint)
        : undefined
    if (share === undefined || partId === undefined) {
      if (heatProbe !== undefined) set({ heatProbe: undefined })
    } else if (heatProbe?.share !== share || heatProbe.partId !== partId) {
      set({ heatProbe: { share, partId } })
    }
  }
  const writeFresh = (): void => {
    const isStale = design !== undefined && design !== useDesignStore.getState().design
    if (!isStale) staleSinceMs = undefined
    else if (staleSinceMs === undefined) {
      staleSinceMs = view.isStill() ? Number.NEGATIVE_INFINITY : performance.now()
    }
    const fresh = staleSinceMs === undefined ? 1 : freshAfter(performance.now() - staleSinceMs)
    layer.setFresh(fresh)
  }
  const refresh = (): void => {
    if (useViewStore.getState().showHeat) view.invalidate()
  }
  const takeAnswer = (): void => {
    const { answer, answerDesign } = useHeatField.getState()
    design = answerDesign
    warmestOutsideShare = answer?.warmestOutsideShare ?? 1
    if (answer?.grid !== grid) {
      grid = answer?.grid
      layer.setField(grid)
    }
    writeRanges()
    writeFresh()
    writeProbe()
    refresh()
  }
  takeAnswer()
  const stops = [
    useHeatField.subscribe((now, before) => {
      if (now.answer !== before.answer || now.answerDesign !== before.answerDesign) takeAnswer()
    }),
    useDesignStore.subscribe((now, before) => {
      if (now.design === before.design) return
      writeFresh()
      refresh()
    }),
    useViewStore.subscribe((now, before) => {
      if (now.units !== before.units) writeRanges()
      if (now.showHeat !== before.showHeat || now.assembly !== before.assembly) writeProbe()
    }),
  ]
  return {
    advance: () => {
      const before = layer.uniforms.uFresh.value
      writeFresh()
      const isFading = staleSinceMs !== undefined && before > 0
      return isFading && useViewStore.getState().showHeat
    },
    probe: (hit) => {
      over = hit
      writeProbe()
    },
    dispose: () => {
      for (const stop of stops) stop()
      over = undefined
      writeProbe()
    },
  }
}
