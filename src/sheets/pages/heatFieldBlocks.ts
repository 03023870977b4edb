import { allEdgesWords, edgeWords } from '../../reports/heat/field/edgeWords.ts'
import type { HeatFieldAnswer, LossShare } from '../../reports/heat/field/heatFieldAnswer.ts'
import { formatLength } from '../../units/length.ts'
import { formatNumber, formatTrimmed } from '../../units/number.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { formatTemperature } from '../../units/temperature.ts'
import {
  formatConductance,
  formatConductanceBand,
  formatFineConductance,
  type ThermalUnit,
} from '../../units/thermal.ts'
import { type Block, heading, paragraph } from './blocks.ts'
import type { SheetContent } from './sheetPage.ts'

/**
 * What the whole hive loses, with the band that certainly holds it, beside the sum of its panels. `night`
 * says what that is on the cold night.
 */
export const wholeHiveBlock = (
  { report: { heat }, units }: Pick<SheetContent, 'report' | 'units'>,
  field: HeatFieldAnswer,
  night: string,
): Block => {
  const sum = heat.panels.reduce((total, p) => total + p.conductanceWPerK, 0)
  const show = (wPerK: number) => formatConductance(wPerK, units.thermal, 2)
  return paragraph(
    `The whole hive loses ${show(field.conductanceWPerK)}, for the hive as modelled certainly between ` +
      `${formatConductanceBand(field.lowerWPerK, field.upperWPerK, units.thermal)}. ${night} ` +
      `The panels by themselves would lose ${show(sum)}.${caveat(field)}`,
  )
}

const caveat = ({ quality, hasConverged }: HeatFieldAnswer): string =>
  hasConverged
    ? quality === 'preview'
      ? ' These are the figures of a quick first look; print again for the exact ones.'
      : ''
    : ' The reckoning did not settle, so take these figures as rough.'

/** Where the heat goes, what edges cost, and the coldest place inside. */
export const fieldBlocks = (
  { design, units }: Pick<SheetContent, 'design' | 'units'>,
  field: HeatFieldAnswer,
): readonly Block[] => [
  heading('Where the heat goes'),
  shareTable(field, units.thermal),
  heading('Corners and edges'),
  paragraph(
    `${allEdgesWords(field.edges, units.length)} This is heat beyond what the panels’ own R-values ` +
      'explain, over inside lengths (ISO 10211).',
  ),
  edgeTable(field, units),
  heading('Coldest place inside'),
  paragraph(coldestWords({ design, units }, field)),
]

const SHARE_NAMES: Readonly<Record<LossShare['id'], string>> = {
  lid: 'Lid',
  walls: 'Four walls',
  floor: 'Floor',
  entrances: 'Entrances and vents',
}

const shareTable = ({ shares }: HeatFieldAnswer, unit: ThermalUnit): Block => ({
  kind: 'table',
  columns: [
    { title: 'Through', share: 50, weight: 'semibold' },
    { title: 'Share of the heat', share: 40, anchor: 'end' },
    { title: 'For each degree', share: 50, anchor: 'end' },
    { title: '', share: 100 },
  ],
  rows: shares.map(({ id, share, conductanceWPerK }) => [
    SHARE_NAMES[id],
    `${formatNumber(100 * share, 1)} %`,
    formatFineConductance(conductanceWPerK, unit),
    '',
  ]),
})

const edgeTable = ({ edges }: HeatFieldAnswer, units: UnitPreferences): Block => ({
  kind: 'table',
  columns: [
    { title: 'Edge', share: 56, weight: 'semibold' },
    { title: 'In plain words', share: 102 },
    { title: 'Length', share: 28, anchor: 'end' },
    { title: 'More heat', share: 36, anchor: 'end' },
    { title: 'For each metre, W/(m·K)', share: 36, anchor: 'end' },
  ],
  rows: edges.map((edge) => [
    edge.name,
    edgeWords(edge, units.length),
    showMetres(edge.lengthM, units),
    formatFineConductance(edge.extraWPerK, units.thermal),
    formatNumber(edge.psiWPerMK, 3),
  ]),
})

const showMetres = (m: number, { length }: UnitPreferences): string =>
  length === 'mm'
    ? `${formatNumber(m, 2)} m`
    : formatLength(m * 1000, length, { withUnit: true, denominator: 16 })

const coldestWords = (
  { design, units }: Pick<SheetContent, 'design' | 'units'>,
  { coldest: { fRsi, place } }: HeatFieldAnswer,
): string => {
  const { coldNightC: outsideC } = design.site
  const { cavityAirC: insideC } = design.colony
  // A tenth of a degree would promise more than the reckoning knows.
  const show = (celsius: number) => formatTemperature(celsius, units.temperature, { decimals: 0 })
  return (
    `It is ${place}. With ${show(outsideC)} outside and ${show(insideC)} inside, the surface there is at ` +
    `${show(outsideC + fRsi * (insideC - outsideC))}. Its temperature factor fRsi is ` +
    `${formatNumber(fRsi, 2)}: 0 would be as cold as the air outside, 1 as warm as the air inside. ` +
    'Water settles first where it is lowest.'
  )
}

/** How the field was found, and what is not in it. */
export const fieldMethodBlocks = (field: HeatFieldAnswer): readonly Block[] => [
  paragraph(
    '“In this hive” follows the heat in three dimensions through every part: rails, corners, edges and ' +
      'openings are counted. It is the R-value that an even panel of the same inside area would need ' +
      'to lose as much. Two reckonings are made: one can never come out too low, the other never too ' +
      `high, so the truth lies between them (principles of Dirichlet and Thomson).${slopeWords(field)}`,
  ),
  paragraph(['What it leaves out or makes simpler:', ...field.leftOut].join(' ')),
]

const slopeWords = ({ slopeStepError }: HeatFieldAnswer): string =>
  slopeStepError > 0
    ? ' Slopes are cut into steps; twice as many would change the whole by ' +
      `${slopeStepError < 1e-4 ? 'less than 0.01' : formatTrimmed(100 * slopeStepError, 2)} %.`
    : ''
