import type { Check } from '../../reports/checks/runChecks.ts'
import { formatMass } from '../../units/mass.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { formatLimits, formatMeasured } from '../checkWords.ts'
import { type Block, heading, paragraph } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

/** Lifts through the season, and every check that is not in order with its reason and source. */
export const checkPages = (content: SheetContent): readonly SheetPage[] => {
  const { report, units, paper, type } = content
  const open = report.checks.filter((c) => c.verdict !== 'ok')
  const count = report.checks.length
  const blocks: readonly Block[] = [
    heading('Checks that need a look'),
    open.length === 0
      ? paragraph(`None. All ${count} checks are in order.`)
      : paragraph(`${open.length} of ${count} checks; the others are in order.`),
    ...(open.length === 0 ? [] : [checkTable(open, units)]),
    heading('What is lifted in a season'),
    {
      kind: 'table',
      columns: [
        { title: 'Lift', share: 120, weight: 'semibold' },
        { title: 'Mass', share: 40, anchor: 'end' },
        { title: '', share: 90 },
      ],
      rows: report.keeper.lifts.map((l) => [l.name, formatMass(l.massKg, units.mass), '']),
    },
    paragraph(
      'Moving the whole hive is no lift for one person: empty it weighs ' +
        `${formatMass(report.shop.massKg.empty, units.mass, { decimals: 0 })}, full of honey ` +
        `${formatMass(report.keeper.fullMassKg, units.mass, { decimals: 0 })}.`,
    ),
  ]
  return flowBlocks(blocks, paper.content, type).map((items) => ({
    title: 'Checks and lifts',
    scale: '',
    items,
  }))
}

const checkTable = (checks: readonly Check[], units: UnitPreferences): Block => ({
  kind: 'table',
  columns: [
    { title: 'Check', share: 44, weight: 'semibold' },
    { title: 'Verdict', share: 24, weight: 'semibold' },
    { title: 'Measured', share: 26, anchor: 'end' },
    { title: 'Limit', share: 34, anchor: 'end' },
    { title: 'Why', share: 78 },
    { title: 'Source', share: 50 },
  ],
  rows: checks.map((c) => [
    c.title,
    c.verdict === 'fix' ? 'put right' : 'have a look',
    c.measured === undefined ? '–' : formatMeasured(c.quantity, c.measured, units),
    formatLimits(c, units) || '–',
    c.why,
    c.source,
  ]),
})
