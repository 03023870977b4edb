import { materialById } from '../catalog/materials.ts'
import type { WholeShop } from '../reports/shop/benchReport.ts'
import type { LumberGroup, SheetGroup } from '../reports/shop/cutting/cuttingPlan.ts'
import type { BarPattern, LumberResult } from '../solvers/cutting/lumber/lumberJob.ts'
import type { SheetLayout, SheetResult } from '../solvers/cutting/sheets/sheetJob.ts'
import type { LengthUnit } from '../units/length.ts'
import { csvCount, csvLength, csvMoney } from './csvNumbers.ts'
import { type CsvNumber, csvText } from './csvText.ts'
import { fastenerWords } from './shop/fastenerWords.ts'
import { settingWords } from './shop/settingWords.ts'
import { leftOverWords, SHOPPING_KINDS, unitWords } from './shop/shoppingWords.ts'

/** One list of the workshop as a table file. */
export interface ShopTable {
  /** As it is to be called in a menu and a file name: `boards`. */
  readonly name: string
  readonly csv: string
}

/** Every list of the workshop, in the order of the job. Boards and sheets only once they are planned. */
export const shopTables = (shop: WholeShop, unit: LengthUnit): readonly ShopTable[] => [
  { name: 'shopping list', csv: shoppingCsv(shop, unit) },
  ...(shop.plan === undefined
    ? []
    : [
        { name: 'boards', csv: boardsCsv(shop.plan.jobs.lumber, shop.plan.lumber, unit) },
        { name: 'sheets', csv: sheetsCsv(shop.plan.jobs.sheets, shop.plan.sheets, unit) },
      ]),
  { name: 'set-ups', csv: setUpsCsv(shop, unit) },
  { name: 'fasteners', csv: fastenersCsv(shop, unit) },
  { name: 'hardware', csv: hardwareCsv(shop) },
  { name: 'assembly', csv: assemblyCsv(shop) },
  { name: 'labels', csv: labelsCsv(shop) },
]

type Row = readonly (string | CsvNumber)[]

const shoppingCsv = ({ shopping }: WholeShop, unit: LengthUnit): string =>
  csvText(
    [
      'Kind',
      'Buy',
      'Unit',
      'What',
      'Size or pack',
      'Price each',
      'Price',
      'Demo price',
      'On hand',
      'Left over',
    ],
    shopping.lines.map(
      (line): Row => [
        SHOPPING_KINDS[line.kind],
        csvCount(line.quantity),
        line.unit,
        line.name,
        unitWords(line, unit),
        csvMoney(line.priceEach),
        csvMoney(line.price),
        line.isDemoPrice ? 'yes' : 'no',
        line.onHand ? 'yes' : 'no',
        leftOverWords(line, unit),
      ],
    ),
  )

const boardsCsv = (
  groups: readonly LumberGroup[],
  results: readonly LumberResult[],
  unit: LengthUnit,
): string => {
  const length = csvLength(unit)
  const patternRows = (group: LumberGroup, pattern: BarPattern, number: number): readonly Row[] =>
    pattern.pieces.map((piece) => [
      group.materialName,
      group.section,
      csvCount(number),
      csvCount(pattern.count),
      length(group.job.stocks[pattern.stock]?.lengthMm ?? 0),
      group.blanks[piece.part]?.label ?? '',
      group.blanks[piece.part]?.name ?? '',
      length(piece.fromMm),
      length(piece.lengthMm),
      length(pattern.offcutMm),
    ])
  return csvText(
    [
      'Material',
      'Section',
      'Pattern',
      'Boards cut alike',
      `Board length (${unit})`,
      'Part',
      'Name',
      `From (${unit})`,
      `Piece length (${unit})`,
      `Left over (${unit})`,
    ],
    groups.flatMap((group, i) => {
      const result = results[i]
      if (result?.kind !== 'plan') return []
      return result.patterns.flatMap((pattern, k) => patternRows(group, pattern, k + 1))
    }),
  )
}

const sheetsCsv = (
  groups: readonly SheetGroup[],
  results: readonly SheetResult[],
  unit: LengthUnit,
): string => {
  const length = csvLength(unit)
  const layoutRows = (group: SheetGroup, layout: SheetLayout, number: number): readonly Row[] => {
    const stock = group.job.stocks[layout.stock]
    return layout.pieces.map((piece) => [
      group.materialName,
      length(group.thicknessMm),
      csvCount(number),
      csvCount(layout.count),
      length(stock?.lengthMm ?? 0),
      length(stock?.widthMm ?? 0),
      group.labels[piece.part] ?? '',
      group.names[piece.part] ?? '',
      length(piece.xMm),
      length(piece.yMm),
      length(piece.lengthMm),
      length(piece.widthMm),
      piece.turned ? 'yes' : 'no',
    ])
  }
  return csvText(
    [
      'Material',
      `Thickness (${unit})`,
      'Layout',
      'Sheets cut alike',
      `Sheet length (${unit})`,
      `Sheet width (${unit})`,
      'Part',
      'Name',
      `From left (${unit})`,
      `From edge (${unit})`,
      `Along (${unit})`,
      `Across (${unit})`,
      'Turned',
    ],
    groups.flatMap((group, i) => {
      const result = results[i]
      if (result?.kind !== 'plan') return []
      return result.layouts.flatMap((layout, k) => layoutRows(group, layout, k + 1))
    }),
  )
}

const setUpsCsv = ({ setUps }: WholeShop, unit: LengthUnit): string =>
  csvText(
    ['Set-up', 'Tool', 'Setting', 'Stock', 'Part', 'Name', 'Pieces', 'Stop block', 'Problem'],
    setUps.setUps.flatMap((setUp) =>
      setUp.rows.map(
        (row): Row => [
          csvCount(setUp.number),
          setUp.tool,
          settingWords(setUp.setting, unit),
          setUp.stock,
          row.label,
          row.name,
          csvCount(row.count),
          setUp.usesStopBlock ? 'yes' : 'no',
          setUp.problem === undefined ? '' : `${setUp.problem.message} ${setUp.problem.wayOut}`,
        ],
      ),
    ),
  )

const fastenersCsv = ({ fasteners }: WholeShop, unit: LengthUnit): string => {
  const length = csvLength(unit)
  return csvText(
    [
      'Joint',
      'Step',
      'Head in',
      'Point in',
      'Count',
      'Fastener',
      `Apart (${unit})`,
      `From edge (${unit})`,
      `From end (${unit})`,
      'Pilot (mm)',
      'Glue',
      'Rule',
      'Source',
      'Mind',
    ],
    fasteners.fastenings.map(
      (f): Row => [
        f.joint,
        csvCount(f.step),
        f.labels[0],
        f.labels[1],
        csvCount(f.count),
        fastenerWords(f.fastener, unit),
        length(f.spacingMm),
        length(f.edgeMm),
        length(f.endMm),
        csvCount(f.pilotMm),
        f.glue ? 'yes' : 'no',
        f.rule,
        f.source,
        f.warning ?? '',
      ],
    ),
  )
}

const hardwareCsv = ({ fasteners }: WholeShop): string =>
  csvText(
    ['Count', 'Unit', 'What', 'For', 'Look for', 'Source'],
    [
      ...fasteners.hardware.map(
        (h): Row => [csvCount(h.count), h.unit, h.name, h.use, h.detail, h.source],
      ),
      ...fasteners.adhesives.map(
        (a): Row => [csvCount(a.quantity), a.unit, a.name, a.use, a.why, a.source],
      ),
    ],
  )

const assemblyCsv = ({ assembly }: WholeShop): string =>
  csvText(
    [
      'Step',
      'Title',
      'Parts',
      'What to do',
      'Second person',
      'Least minutes',
      'Most minutes',
      'Wait (h)',
    ],
    assembly.steps.map(
      (step): Row => [
        csvCount(step.number),
        step.title,
        step.rows.map((r) => `${r.count} × ${r.label}`).join(', '),
        step.instructions.join(' '),
        step.secondPerson ?? '',
        csvCount(step.minutes[0]),
        csvCount(step.minutes[1]),
        csvCount(step.waitHours),
      ],
    ),
  )

const labelsCsv = ({ assembly, cutList }: WholeShop): string =>
  csvText(
    ['Part', 'Name', 'Count', 'Material', 'Up', 'Outside', 'Hand', 'Meets'],
    assembly.labels.map((label): Row => {
      const row = cutList.find((r) => r.label === label.label)
      return [
        label.label,
        label.name,
        csvCount(label.count),
        row === undefined ? '' : materialById(row.material).name,
        label.up,
        label.outside,
        label.hand,
        label.mates.join(' '),
      ]
    }),
  )
