import { type DrawingItem, LABEL_SIZE_MM, textItem } from '../drawing.ts'
import { LINE_SPACING, type Typesetter } from '../type/typesetter.ts'
import type { Block } from './blocks.ts'
import type { PaperBox } from './paper.ts'
import type { Strip } from './strip.ts'
import { layTable } from './tableRows.ts'

const HEADING_MM = 5
const BODY = { sizeMm: LABEL_SIZE_MM, weight: 'regular' } as const
const LINE = LABEL_SIZE_MM * LINE_SPACING
const AFTER_BLOCK = 4
/** Long lines are hard to follow; text stops here even on a wide page. */
const TEXT_WIDTH = 190

/**
 * Sets blocks one under another over as many pages as they need. A heading stays with what follows it,
 * and so do words above a drawing; a table row is never parted, a short table is kept whole, and a
 * table's head stands again at the top of each page it runs over.
 * A strip taller than the page overhangs its foot; callers keep cells short enough that none is.
 */
export const flowBlocks = (
  blocks: readonly Block[],
  area: PaperBox,
  type: Typesetter,
): readonly (readonly DrawingItem[])[] => {
  const pages: DrawingItem[][] = [[]]
  let y = area.y0
  blocks
    .map((block, i) => layBlock(block, area, { type, next: blocks[i + 1] }))
    .forEach((laid, i, all) => {
      const { strips, head, after } = laid
      const lead = leadFrom(all, i, area)
      if (y > area.y0 && y + lead > area.y1) {
        pages.push([])
        y = area.y0
      }
      const put = (strip: Strip) => {
        pages.at(-1)?.push(...strip.draw(y))
        y += strip.heightMm
      }
      if (head) put(head)
      for (const strip of strips) {
        if (y + strip.heightMm > area.y1 + 1e-6) {
          pages.push([])
          y = area.y0
          if (head) put(head)
        }
        put(strip)
      }
      y += after
    })
  return pages
}

/** A block cut into strips; `head` stands above them on every page. */
interface LaidBlock {
  readonly head: Strip | undefined
  readonly strips: readonly Strip[]
  readonly after: number
  readonly keepsNext: boolean
}

const layBlock = (
  block: Block,
  area: PaperBox,
  { type, next }: { readonly type: Typesetter; readonly next: Block | undefined },
): LaidBlock => {
  if (block.kind === 'table') {
    const { head, rows } = layTable(block, area, type)
    return { head, strips: rows, after: AFTER_BLOCK, keepsNext: false }
  }
  if (block.kind === 'strips') {
    return { head: undefined, strips: block.strips, after: AFTER_BLOCK, keepsNext: false }
  }
  const isHeading = block.kind === 'heading'
  return {
    head: undefined,
    strips: isHeading ? headingStrips(block.text, area, type) : textStrips(block.text, area, type),
    after: isHeading ? 0 : AFTER_BLOCK,
    // Words above a drawing are about it.
    keepsNext: isHeading || next?.kind === 'strips',
  }
}

/** What must stand together from a block on: its own lead, and that of what it is kept with. */
const leadFrom = (all: readonly LaidBlock[], index: number, area: PaperBox): number => {
  const laid = all[index]
  if (laid === undefined) return 0
  if (!laid.keepsNext) return leadHeight(laid, area)
  const whole = laid.strips.reduce((sum, strip) => sum + strip.heightMm, 0)
  return whole + laid.after + leadFrom(all, index + 1, area)
}

/** A table no taller than this share of the page is kept on one page. */
const KEPT_SHARE = 0.6

/** What must stand together at the start of a block: a short table, else the head and the first strip. */
const leadHeight = (laid: LaidBlock, area: PaperBox): number => {
  const headHeight = laid.head?.heightMm ?? 0
  const whole = headHeight + laid.strips.reduce((sum, s) => sum + s.heightMm, 0)
  const isKept = laid.head !== undefined && whole <= KEPT_SHARE * (area.y1 - area.y0)
  return isKept ? whole : headHeight + (laid.strips[0]?.heightMm ?? 0)
}

const headingStrips = (raw: string, area: PaperBox, type: Typesetter): readonly Strip[] => {
  const style = { sizeMm: HEADING_MM, weight: 'semibold' } as const
  const lines = type.wrap(type.clean(raw).text, style, area.x1 - area.x0)
  return [
    {
      heightMm: lines.length * HEADING_MM * LINE_SPACING + 1.5,
      draw: (y) =>
        lines.map((line, i) =>
          textItem({ x: area.x0, y: y + HEADING_MM * (1 + i * LINE_SPACING) }, line, style),
        ),
    },
  ]
}

const textStrips = (raw: string, area: PaperBox, type: Typesetter): readonly Strip[] => {
  const width = Math.min(TEXT_WIDTH, area.x1 - area.x0)
  return type.wrap(type.clean(raw).text, BODY, width).map((line) => ({
    heightMm: LINE,
    draw: (y) => [textItem({ x: area.x0, y: y + LABEL_SIZE_MM }, line, BODY)],
  }))
}
