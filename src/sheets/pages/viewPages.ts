import type { DrawingItem } from '../drawing.ts'
import { firstScale, fitsIn, SCALE_DENOMINATORS, type Size } from '../fitScale.ts'
import { placeDrawing, type ViewDrawing } from '../view.ts'
import { composeView, fitView, type ViewSpec, viewSize } from '../views/composeView.ts'
import { lengthSection } from '../views/crossSection.ts'
import { frontView } from '../views/frontView.ts'
import { sideView } from '../views/sideView.ts'
import { swingView } from '../views/swingView.ts'
import { openTopView, topView } from '../views/topView.ts'
import { checkBar } from './checkBar.ts'
import { placeRow, rowSize, scaleWords, VIEW_GAP } from './packViews.ts'
import { boxSize } from './paper.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

/**
 * Front, side and top view at one true scale: on one page in their projected places where that loses no
 * scale, else front and side on one page and the top on the next; then lid and floor swung open, and the
 * row of frames from above and in a section.
 */
export const viewPages = (content: SheetContent): readonly SheetPage[] => {
  const { hive, units, paper } = content
  const area = boxSize(paper.content)
  const front = frontView(hive, units)
  const side = sideView(hive, units, paper.projection === 'first-angle' ? 'left' : 'right')
  const top = topView(hive, units)
  const bar = checkBar(paper)
  const together = fitTogether(front, side, top, area)
  const apart = Math.max(fitRow([front, side], area), fitRow([top], area))
  const rest = [swingView(hive, units), openTopView(hive, units), lengthSection(hive, units)]
  // A very long hive would make its ends too small to read: then each view has the scale it can.
  if (Math.min(together, apart) > SMALLEST_SHARED)
    return rowPages([front, side, top, ...rest], content)
  if (together <= apart) {
    const drawn = [front, side, top].map((s) => composeView(s, together))
    return [
      {
        title: 'Front, side and top view',
        scale: `1:${together}`,
        items: [...placeTogether(drawn, content), ...bar],
      },
      ...rowPages(rest, content),
    ]
  }
  return [
    {
      title: 'Front and side view',
      scale: `1:${apart}`,
      items: [
        ...placeRow(
          [front, side].map((s) => composeView(s, apart)),
          paper.content,
        ),
        ...bar,
      ],
    },
    ...rowPages([top, ...rest], content),
  ]
}

/** Below 1:20 the dimension lines of an end view have no room for their figures. */
const SMALLEST_SHARED = 20

/** The largest scale at which views stand side by side. */
const fitRow = (specs: readonly ViewSpec[], area: Size): number =>
  firstScale((n) => fitsIn(rowSize(specs.map((s) => viewSize(s, n))), area))

const fitTogether = (front: ViewSpec, side: ViewSpec, top: ViewSpec, area: Size): number =>
  firstScale((n) => {
    const row = rowSize([front, side].map((s) => viewSize(s, n)))
    const above = viewSize(top, n)
    return fitsIn(
      {
        widthMm: Math.max(row.widthMm, above.widthMm),
        heightMm: row.heightMm + VIEW_GAP + above.heightMm,
      },
      area,
    )
  })

/** Front and side in a row; the top under the front in first angle, over it in third. */
const placeTogether = (
  [front, side, top]: readonly ViewDrawing[],
  { paper }: SheetContent,
): readonly DrawingItem[] => {
  if (front === undefined || side === undefined || top === undefined) return []
  const box = paper.content
  const row = rowSize([front, side])
  const slack = {
    x: Math.max(0, (box.x1 - box.x0 - row.widthMm) / 2),
    y: Math.max(0, (box.y1 - box.y0 - row.heightMm - top.heightMm - VIEW_GAP) / 2),
  }
  const isFirst = paper.projection === 'first-angle'
  const y0 = box.y0 + slack.y
  const frontAt = { x: box.x0 + slack.x, y: isFirst ? y0 : y0 + top.heightMm + VIEW_GAP }
  const sideAt = { x: frontAt.x + front.widthMm + VIEW_GAP, y: frontAt.y }
  // One length of hive stands under the other: their origins share an x.
  const topAt = {
    x: frontAt.x + front.view.origin.x - top.view.origin.x,
    y: isFirst ? y0 + row.heightMm + VIEW_GAP : y0,
  }
  return [
    ...placeDrawing(front, frontAt),
    ...placeDrawing(side, sideAt),
    ...placeDrawing(top, topAt),
  ]
}

/** Views one after another, each as large as a page allows, side by side where the next one fits too. */
const rowPages = (specs: readonly ViewSpec[], content: SheetContent): readonly SheetPage[] => {
  const { paper } = content
  const area = boxSize(paper.content)
  const pages: SheetPage[] = []
  let waiting = [...specs]
  while (waiting.length > 0) {
    const [first, second] = waiting
    if (first === undefined) break
    const alone = fitView(first, area)
    const beside = second && besideDrawing(second, area, alone)
    const row = beside ? [alone, beside] : [alone]
    pages.push({
      title: waiting
        .slice(0, row.length)
        .map((s) => s.shortTitle ?? s.title)
        .join('. '),
      scale: scaleWords(row),
      items: [...placeRow(row, paper.content), ...checkBar(paper)],
    })
    waiting = waiting.slice(row.length)
  }
  return pages
}

/**
 * The next view beside one already drawn, at that one's scale or one step smaller, where there is room
 * and it loses at most one step of the scale that it has alone and stays at 1:20 or above if it can.
 */
const besideDrawing = (spec: ViewSpec, area: Size, alone: ViewDrawing): ViewDrawing | undefined => {
  const stepOf = (n: number) => SCALE_DENOMINATORS.map(Number).indexOf(n)
  const step = stepOf(alone.scaleDenominator)
  const ownScale = fitRow([spec], area)
  return SCALE_DENOMINATORS.slice(step, step + 2)
    .filter((n) => stepOf(n) <= stepOf(ownScale) + 1 && n <= Math.max(SMALLEST_SHARED, ownScale))
    .map((n) => composeView(spec, n))
    .find(
      (d) =>
        rowSize([alone, d]).widthMm <= area.widthMm && alignedHeight(alone, d) <= area.heightMm,
    )
}

/** Height of two drawings whose origins are on one level. */
const alignedHeight = (a: ViewDrawing, b: ViewDrawing): number =>
  Math.max(a.view.origin.y, b.view.origin.y) +
  Math.max(a.heightMm - a.view.origin.y, b.heightMm - b.view.origin.y)
