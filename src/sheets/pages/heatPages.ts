import type { HeatFlow, HeatReport, PanelHeat } from '../../reports/heat/computeHeat.ts'
import type { PanelField } from '../../reports/heat/field/heatFieldAnswer.ts'
import { formatLength } from '../../units/length.ts'
import { formatNumber } from '../../units/number.ts'
import { formatTemperature } from '../../units/temperature.ts'
import { formatConductance, formatResistance } from '../../units/thermal.ts'
import { type Block, heading, paragraph } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import { comparisonBlocks } from './heatComparisonBlocks.ts'
import { fieldBlocks, fieldMethodBlocks, wholeHiveBlock } from './heatFieldBlocks.ts'
import { heatSectionPages } from './heatSectionPages.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

const FLOW_WORDS: Readonly<Record<HeatFlow, string>> = {
  up: 'upwards',
  horizontal: 'sideways',
  down: 'downwards',
}

const MONTHS = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec']

const PANEL_NAMES: Readonly<Record<PanelHeat['id'], string>> = {
  'front-wall': 'Front wall',
  'back-wall': 'Back wall',
  'left-wall': 'Left end wall',
  'right-wall': 'Right end wall',
  lid: 'Lid',
  floor: 'Floor',
}

/**
 * R-values of every panel with their bounds, how they were found and what they leave out. Once the heat
 * has been followed in three dimensions, what the hive as a whole loses and where, drawn in section too.
 */
export const heatPages = (content: SheetContent): readonly SheetPage[] => {
  const { report, units, paper, type, comparisons } = content
  const { heat } = report
  const { field } = heat
  const text: readonly Block[] = [
    heading('R-values'),
    panelTable(content),
    field ? wholeHiveBlock(content, field, nightWords(content)) : panelSumBlock(content),
    ...(field ? fieldBlocks(content, field) : []),
    ...(field && comparisons ? comparisonBlocks(comparisons, field, units.thermal) : []),
    heading('How this was worked out, and what it leaves out'),
    ...methodBlocks(heat),
    heading('Layer by layer, between the rails'),
    layerTable(content),
    heading('Heat lost in each month'),
    monthTable(content),
  ]
  return [
    ...flowBlocks(text, paper.content, type).map((items) => ({
      title: 'R-values and heat',
      scale: '',
      items,
    })),
    ...(field ? heatSectionPages(content, field) : []),
  ]
}

const panelSumBlock = (content: SheetContent): Block => {
  const { heat } = content.report
  const lost = formatConductance(heat.conductanceWPerK, content.units.thermal)
  return paragraph(`All panels together lose ${lost}. ${nightWords(content)}`)
}

const nightWords = ({ design, report: { heat }, units }: SheetContent): string => {
  const inside = formatTemperature(design.colony.cavityAirC, units.temperature, { decimals: 0 })
  const night = formatTemperature(design.site.coldNightC, units.temperature, { decimals: 0 })
  return `On a night of ${night} with ${inside} inside, that is ${formatNumber(heat.coldNightLossW, 0)} W.`
}

const panelTable = ({ report, units }: SheetContent): Block => {
  const show = (m2KPerW: number) => formatResistance(m2KPerW, units.thermal)
  const { heat } = report
  const { field } = heat
  const inHive = (panels: readonly PanelField[]) => {
    const together = resistanceTogether(panels)
    return field ? [together === undefined ? '' : show(together)] : []
  }
  const row = (p: PanelHeat) => [
    PANEL_NAMES[p.id],
    show(p.betweenRailsM2KPerW),
    show(p.withRailsM2KPerW),
    ...inHive(field?.panels.filter(({ id }) => id === p.id) ?? []),
    `${show(p.lowerBoundM2KPerW)} to ${show(p.upperBoundM2KPerW)}`,
    `${formatNumber(100 * p.timberFraction, 0)} %`,
    FLOW_WORDS[p.heatFlow],
    show(p.targetM2KPerW),
    p.meetsTarget ? 'met' : 'not met',
  ]
  return {
    kind: 'table',
    columns: [
      { title: 'Panel', share: 40, weight: 'semibold' },
      { title: 'Between the rails', share: 32, anchor: 'end' },
      { title: 'With the rails', share: 30, anchor: 'end', weight: 'semibold' },
      ...(field
        ? [{ title: 'In this hive', share: 30, anchor: 'end', weight: 'semibold' } as const]
        : []),
      { title: 'Lower to upper bound', share: 46, anchor: 'end' },
      { title: 'Timber', share: 20, anchor: 'end' },
      { title: 'Heat flows', share: 26 },
      { title: 'Wanted', share: 26, anchor: 'end' },
      { title: 'Target', share: 22, weight: 'semibold' },
    ],
    rows: [
      ...heat.panels.map(row),
      [
        'Four walls together',
        show(heat.walls.betweenRailsM2KPerW),
        show(heat.walls.withRailsM2KPerW),
        ...inHive(field?.panels.filter(({ id }) => id !== 'lid' && id !== 'floor') ?? []),
        '',
        '',
        '',
        show(heat.walls.targetM2KPerW),
        heat.walls.meetsTarget ? 'met' : 'not met',
      ],
    ],
  }
}

/** Side by side, areas and heat add up, resistances do not. Undefined for no panels. */
const resistanceTogether = (panels: readonly PanelField[]): number | undefined => {
  const lost = panels.reduce((sum, p) => sum + p.conductanceWPerK, 0)
  const area = panels.reduce((sum, p) => sum + p.conductanceWPerK * p.resistanceM2KPerW, 0)
  return lost > 0 ? area / lost : undefined
}

const methodBlocks = (heat: HeatReport): readonly Block[] => {
  const largest = Math.max(0, ...heat.panels.map((p) => p.relativeError))
  return [
    paragraph(
      '“Between the rails” counts the layers alone, as if there were no timber; it is the number that ' +
        'flatters. “With the rails” is the combined method of ISO 6946: an upper bound, with heat going ' +
        'straight through insulation and rails side by side, and a lower bound, with each layer evened ' +
        'out, and the mean of the two. Both surfaces are counted. The true value lies between the ' +
        `bounds; here the mean can be off by at most ${formatNumber(100 * largest, 0)} %.`,
    ),
    ...(heat.field ? fieldMethodBlocks(heat.field) : [PANELS_LEAVE_OUT]),
  ]
}

const PANELS_LEAVE_OUT = paragraph(
  'Left out: the extra heat through corners and edges, hinges, entrances and draughts, wet ' +
    'insulation, and bees. A real hive loses more than the sum of its panels.',
)

/** All four walls have the same layers. */
const LAYER_NAMES = { ...PANEL_NAMES, 'front-wall': 'Walls' }

const layerTable = ({ report, units }: SheetContent): Block => ({
  kind: 'table',
  columns: [
    { title: 'Panel', share: 50, weight: 'semibold' },
    { title: 'Layer, from inside to outside', share: 110 },
    { title: 'Thickness', share: 34, anchor: 'end' },
    { title: 'R-value', share: 34, anchor: 'end' },
  ],
  rows: [report.heat.panels[0], report.heat.lid, report.heat.floor].flatMap((panel) =>
    panel === undefined
      ? []
      : panel.layers.map((layer, i) => [
          i === 0 ? LAYER_NAMES[panel.id] : '',
          layer.name,
          formatLength(layer.thicknessMm, units.length, { withUnit: true }),
          formatResistance(layer.resistanceM2KPerW, units.thermal),
        ]),
  ),
})

/** The year across the page: one column a month. */
const monthTable = ({ report, units }: SheetContent): Block => {
  const { months } = report.heat
  return {
    kind: 'table',
    columns: [
      { title: '', share: 26, weight: 'semibold' },
      ...months.map((m) => ({
        title: MONTHS[m.month - 1] ?? String(m.month),
        share: 20,
        anchor: 'end' as const,
      })),
    ],
    rows: [
      ['Outside', ...months.map((m) => formatTemperature(m.outsideC, units.temperature))],
      ['Heat lost', ...months.map((m) => `${formatNumber(m.lossW, 1)} W`)],
    ],
  }
}
