import type {
  BaselineAnswer,
  HeatComparisons,
  RemedyAnswer,
} from '../../reports/heat/field/heatComparisons.ts'
import type { HeatFieldAnswer } from '../../reports/heat/field/heatFieldAnswer.ts'
import { publishedHomesWords } from '../../reports/heat/field/publishedHomes.ts'
import { formatNumber, formatTrimmed } from '../../units/number.ts'
import { formatConductance, formatFineConductance, type ThermalUnit } from '../../units/thermal.ts'
import { type Block, heading, paragraph } from './blocks.ts'

/** Other ways to build this hive, the best first, and other homes for bees, the warmest first. */
export const comparisonBlocks = (
  { remedies, baselines }: HeatComparisons,
  field: HeatFieldAnswer,
  unit: ThermalUnit,
): readonly Block[] => [
  ...(remedies.length === 0
    ? []
    : [heading('What other ways to build would bring'), remedyTable(remedies, unit)]),
  ...(baselines.length === 0
    ? []
    : [
        heading('Beside other homes for bees, worked out the same way'),
        baselineTable(baselines, field, unit),
        ...publishedHomesWords(field.conductanceWPerK, baselines).map((words) => paragraph(words)),
      ]),
]

const remedyTable = (remedies: readonly RemedyAnswer[], unit: ThermalUnit): Block => ({
  kind: 'table',
  columns: [
    { title: 'Change', share: 52, weight: 'semibold' },
    { title: 'How', share: 120 },
    { title: 'Whole hive then', share: 34, anchor: 'end' },
    { title: 'Saves or costs', share: 44, anchor: 'end', weight: 'semibold' },
  ],
  rows: [...remedies]
    .sort((a, b) => b.savedWPerK - a.savedWPerK)
    .map((r) => [
      r.name,
      r.how,
      formatConductance(r.conductanceWPerK, unit, 2),
      savedWords(r, unit),
    ]),
})

const savedWords = ({ savedWPerK, conductanceWPerK }: RemedyAnswer, unit: ThermalUnit): string => {
  const size = Math.abs(savedWPerK)
  if (size < 0.0005) return 'next to nothing'
  const percent = formatTrimmed((100 * size) / (conductanceWPerK + savedWPerK), 1)
  return `${savedWPerK > 0 ? 'saves' : 'costs'} ${formatFineConductance(size, unit)}, ${percent} %`
}

const baselineTable = (
  baselines: readonly BaselineAnswer[],
  field: HeatFieldAnswer,
  unit: ThermalUnit,
): Block => {
  const own = {
    name: 'This hive',
    about: '',
    volume: '',
    conductanceWPerK: field.conductanceWPerK,
  }
  const others = baselines.map((b) => ({ ...b, volume: `${formatTrimmed(b.volumeL, 0)} L` }))
  return {
    kind: 'table',
    columns: [
      { title: 'Home', share: 62, weight: 'semibold' },
      { title: 'What it is', share: 114 },
      { title: 'Room', share: 18, anchor: 'end' },
      { title: 'Loses for each degree', share: 34, anchor: 'end', weight: 'semibold' },
      { title: 'Times this hive', share: 22, anchor: 'end' },
    ],
    rows: [own, ...others]
      .sort((a, b) => a.conductanceWPerK - b.conductanceWPerK)
      .map((home) => [
        home.name,
        home.about,
        home.volume,
        formatConductance(home.conductanceWPerK, unit, 2),
        formatNumber(home.conductanceWPerK / field.conductanceWPerK, 2),
      ]),
  }
}
