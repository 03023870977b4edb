import type { DrawingItem } from '../drawing.ts'
import { laySetUpCard } from '../shop/setUpCard.ts'
import { type Block, heading, paragraph } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import { packColumns } from './packColumns.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

const ACROSS = 3
const GUTTER = 5

/** A card for every setting of every tool, in the order of work. */
export const setUpPages = (content: SheetContent): readonly SheetPage[] => {
  const { report, units, paper, type } = content
  const { setUps, partCount, tools, nearTwins } = report.shop.setUps
  if (setUps.length === 0) return []
  const area = paper.content
  const widthMm = (area.x1 - area.x0 - GUTTER * (ACROSS - 1)) / ACROSS
  const cards = setUps.map((setUp) => laySetUpCard(setUp, { widthMm, unit: units.length, type }))
  const blocks: readonly Block[] = [
    heading('Set-up cards'),
    paragraph(
      `${partCount} parts, ${setUps.length} set-ups, ${tools.length} tools: ${tools.join(', ')}. ` +
        'Set each figure once and cut everything on its card before you change it. Large parts ' +
        'come first, so that a spoiled one can become a smaller one.',
    ),
    ...(nearTwins.length === 0
      ? []
      : [
          paragraph(
            `Nearly alike and easily mixed up: ${nearTwins
              .map(({ labels }) => labels.join(' and '))
              .join(', ')}. Mark them as soon as they are cut.`,
          ),
        ]),
  ]
  const intro = flowBlocks(blocks, area, type)
  const introEnd = Math.max(...(intro.at(-1) ?? []).map(bottomOf))
  const first = { ...area, y0: introEnd + 3 }
  const packed = packColumns(cards, { first, others: area, across: ACROSS, gutter: GUTTER })
  const [beside = [], ...more] = packed
  const pages = [...intro.slice(0, -1), [...(intro.at(-1) ?? []), ...beside], ...more]
  return pages.map((items) => ({ title: 'Set-up cards', scale: '', items }))
}

const bottomOf = (item: DrawingItem): number => (item.kind === 'text' ? item.at.y + 1 : 0)
