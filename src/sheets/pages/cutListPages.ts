import type { CutListRow, MaterialTotal } from '../../reports/shop/computeShop.ts'
import { formatArea } from '../../units/area.ts'
import { formatLength } from '../../units/length.ts'
import { formatMass } from '../../units/mass.ts'
import { formatNumber } from '../../units/number.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { operationText } from '../operationText.ts'
import { type Block, heading, paragraph } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

/** Every part to cut and every thing to buy, over as many pages as it takes, with the head repeated. */
export const cutListPages = (content: SheetContent): readonly SheetPage[] => {
  const { report, units, paper, type } = content
  const made = report.shop.cutList.filter((r) => !r.bought)
  const blocks: readonly Block[] = [
    heading('Cut list'),
    paragraph(
      'Sizes are finished sizes; length is along the grain where wood has grain. Write the letter ' +
        'on each part as you cut it.',
    ),
    cutTable(made, units),
  ]
  return flowBlocks(blocks, paper.content, type).map((items) => ({
    title: 'Cut list',
    scale: '',
    items,
  }))
}

const cutTable = (rows: readonly CutListRow[], units: UnitPreferences): Block => ({
  kind: 'table',
  columns: [
    { title: 'Part', share: 12, weight: 'semibold' },
    { title: 'Pieces', share: 17, anchor: 'end', weight: 'semibold' },
    { title: 'Name', share: 41 },
    { title: 'Length', share: 17, anchor: 'end', weight: 'semibold' },
    { title: 'Width', share: 17, anchor: 'end', weight: 'semibold' },
    { title: 'Thick', share: 16, anchor: 'end', weight: 'semibold' },
    { title: 'Grain', share: 23 },
    { title: 'Material', share: 38 },
    { title: 'Each', share: 18, anchor: 'end' },
    { title: 'Work and stock', share: 68 },
  ],
  rows: rows.map((row) => {
    const show = (mm: number) => formatLength(mm, units.length)
    return [
      row.label,
      String(row.count),
      row.hand === 'none' ? row.name : `${row.name} (${row.hand} hand)`,
      show(row.lengthMm),
      show(row.widthMm),
      show(row.thicknessMm),
      GRAIN_WORDS[row.grain],
      row.materialName,
      formatMass(row.massKgEach, units.mass),
      [...row.operations.map((o) => operationText(o, units.length)), row.stock ?? '']
        .filter((t) => t !== '')
        .join('; '),
    ]
  }),
})

const GRAIN_WORDS: Readonly<Record<CutListRow['grain'], string>> = {
  length: 'lengthwise',
  width: 'crosswise',
  none: '–',
}

/** Bought things, sundries, and what each material comes to. */
export const supplyPages = ({ report, units, paper, type }: SheetContent): readonly SheetPage[] => {
  const bought = report.shop.cutList.filter((r) => r.bought)
  const blocks: readonly Block[] = [
    heading('Things to buy ready-made'),
    {
      kind: 'table',
      columns: [
        { title: 'Part', share: 14, weight: 'semibold' },
        { title: 'Pieces', share: 16, anchor: 'end', weight: 'semibold' },
        { title: 'What', share: 80 },
        { title: 'For, or made of', share: 110 },
      ],
      rows: [
        ...bought.map((r) => [r.label, String(r.count), r.name, sizeWords(r, units)]),
        ...report.shop.sundries.map((s) => ['', String(s.count), s.name, s.use]),
      ],
    },
    heading('What each material comes to'),
    totalsTable(report.shop.totals, units),
    paragraph('These are the finished parts alone. Add your own share for saw cuts and waste.'),
  ]
  return flowBlocks(blocks, paper.content, type).map((items) => ({
    title: 'Things to buy and materials',
    scale: '',
    items,
  }))
}

const sizeWords = (row: CutListRow, units: UnitPreferences): string =>
  `${row.materialName}, ${[row.lengthMm, row.widthMm, row.thicknessMm]
    .map((mm) => formatLength(mm, units.length))
    .join(' × ')} ${units.length}`

const totalsTable = (totals: readonly MaterialTotal[], units: UnitPreferences): Block => ({
  kind: 'table',
  columns: [
    { title: 'Material', share: 70, weight: 'semibold' },
    { title: 'Thickness', share: 30, anchor: 'end' },
    { title: 'Pieces', share: 25, anchor: 'end' },
    { title: 'Area', share: 32, anchor: 'end' },
    { title: 'Length in all', share: 34, anchor: 'end' },
    { title: 'Mass', share: 32, anchor: 'end' },
  ],
  rows: totals.map((t) => [
    t.materialName,
    formatLength(t.thicknessMm, units.length, { withUnit: true }),
    String(t.pieces),
    formatArea(t.areaM2, units.length),
    units.length === 'mm'
      ? `${formatNumber(t.lengthM, 1)} m`
      : `${formatNumber(t.lengthM / 0.3048, 1)} ft`,
    formatMass(t.massKg, units.mass),
  ]),
})
