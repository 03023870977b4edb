import type { FastenerReport, Fastening } from '../../reports/shop/fasteners/fastenerReport.ts'
import { formatArea } from '../../units/area.ts'
import { formatLength } from '../../units/length.ts'
import { formatTrimmed } from '../../units/number.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { fastenerWords, hardwareCount } from '../shop/fastenerWords.ts'
import { type Block, heading, paragraph } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

/** Every joint with its fasteners, then hardware, glue and finish. */
export const fastenerPages = (content: SheetContent): readonly SheetPage[] => {
  const { report, units, paper, type } = content
  const { fastenings, hardware, adhesives, finish, drillBitsMm } = report.shop.fasteners
  if (fastenings.length === 0) return []
  const bits = drillBitsMm.map((mm) => formatTrimmed(mm, 1)).join(', ')
  const blocks: readonly Block[] = [
    heading('Fasteners, joint by joint'),
    paragraph(
      'Screws and nails inside the hive and outdoors are stainless or hot-dip galvanised. No point ' +
        'reaches the room of the bees. Try a pilot hole on a scrap of the same wood first.' +
        (bits === '' ? '' : ` Drill bits wanted: ${bits} mm.`),
    ),
    fasteningTable(fastenings, units),
    heading('Hinges, latches and other hardware'),
    hardwareTable(hardware),
    ...adhesiveBlocks(adhesives),
    ...(finish === undefined
      ? []
      : [
          heading('Finish'),
          paragraph(
            `${finish.name}: ${formatArea(finish.areaM2, units.length)} outside, ${finish.coats} ` +
              `coats, about ${formatTrimmed(finish.litres, 1)} litres. Bees may move in ` +
              `${finish.curingDays} days after the last coat. ${finish.advice}`,
          ),
        ]),
  ]
  return flowBlocks(blocks, paper.content, type).map((items) => ({
    title: 'Fasteners and hardware',
    scale: '',
    items,
  }))
}

const fasteningTable = (
  fastenings: readonly Fastening[],
  { length: unit }: UnitPreferences,
): Block => {
  const show = (mm: number) => formatLength(mm, unit)
  return {
    kind: 'table',
    columns: [
      { title: 'Joint', share: 56, weight: 'semibold' },
      { title: 'Parts', share: 22 },
      { title: 'How many', share: 20, anchor: 'end', weight: 'semibold' },
      { title: 'What', share: 56 },
      { title: 'Through', share: 52 },
      { title: 'Apart', share: 18, anchor: 'end' },
      { title: 'From edge, end', share: 26, anchor: 'end' },
      { title: 'Pilot mm', share: 18, anchor: 'end' },
    ],
    rows: fastenings.map((f) => [
      f.warning === undefined ? f.joint : `${f.joint}. Mind: ${f.warning}`,
      f.labels.join(' to '),
      String(f.count),
      `${fastenerWords(f.fastener, unit)}${f.glue ? ', and glue' : ''}`,
      f.layers.map((l) => `${l.name} ${show(l.thicknessMm)}`).join(', '),
      f.count > 1 && f.spacingMm > 0 ? show(f.spacingMm) : '–',
      `${show(f.edgeMm)}, ${show(f.endMm)}`,
      f.pilotMm > 0 ? formatTrimmed(f.pilotMm, 1) : '–',
    ]),
  }
}

const hardwareTable = (hardware: FastenerReport['hardware']): Block => ({
  kind: 'table',
  columns: [
    { title: 'How many', share: 26, anchor: 'end', weight: 'semibold' },
    { title: 'What', share: 64, weight: 'semibold' },
    { title: 'For', share: 74 },
    { title: 'Look for', share: 100 },
  ],
  rows: hardware.map((h) => [hardwareCount(h), h.name, h.use, h.detail]),
})

const adhesiveBlocks = (adhesives: FastenerReport['adhesives']): readonly Block[] =>
  adhesives.length === 0
    ? []
    : [
        heading('Glue, sealant and tape'),
        {
          kind: 'table',
          columns: [
            { title: 'How much', share: 26, anchor: 'end', weight: 'semibold' },
            { title: 'What', share: 64, weight: 'semibold' },
            { title: 'For', share: 74 },
            { title: 'Why this', share: 100 },
          ],
          rows: adhesives.map((a) => [
            `${formatTrimmed(a.quantity, 0)} ${a.unit}`,
            a.name,
            a.use,
            a.why,
          ]),
        },
      ]
