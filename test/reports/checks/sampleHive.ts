import { frameStandardById } from '../../../src/catalog/frameStandards.ts'
import { DEFAULT_DESIGN } from '../../../src/design/defaults.ts'
import type { Design } from '../../../src/design/schema.ts'
import { setField } from '../../../src/design/setField.ts'
import { deriveHive } from '../../../src/hive/deriveHive.ts'
import { measureHive } from '../../../src/hive/measure.ts'
import { layRow } from '../../../src/hive/row.ts'
import type { Check, FieldChange } from '../../../src/reports/checks/runChecks.ts'
import { type Report, runReports } from '../../../src/reports/report.ts'

/** The design with some fields set; a field that does not take its value as it is fails the test. */
export const withFields = (design: Design, changes: readonly FieldChange[]): Design =>
  changes.reduce((before, { field, value }) => {
    const { design: after, limited } = setField(before, field, value)
    if (limited !== undefined) throw new Error(limited)
    return after
  }, design)

/** A hive for tests whose every check is all right, whatever the default design becomes. */
export const SAMPLE: Design = withFields(
  {
    ...DEFAULT_DESIGN,
    frame: { ...DEFAULT_DESIGN.frame, ...frameStandardById('langstroth-medium').dimensions },
  },
  [
    { field: 'frame.form', value: 'single' },
    { field: 'frame.topBarThicknessMm', value: 19 },
    { field: 'frame.spacingMm', value: 35 },
    { field: 'cavity.frames', value: 24 },
    { field: 'cavity.emptyPlaces', value: 0 },
    { field: 'cavity.endBarSpaceMm', value: 8 },
    { field: 'cavity.aboveSpaceMm', value: 7 },
    { field: 'cavity.belowSpaceMm', value: 13 },
    { field: 'cavity.rowEndSpaceMm', value: 4 },
    { field: 'cavity.playMm', value: 15 },
    { field: 'cavity.lugClearanceMm', value: 2 },
    { field: 'cavity.followers', value: 'one' },
    { field: 'cavity.followerAAfterFrame', value: 12 },
    { field: 'cavity.divider', value: 'none' },
    { field: 'walls.liningMm', value: 12 },
    { field: 'walls.coreMm', value: 60 },
    { field: 'walls.targetM2KPerW', value: 1.2 },
    { field: 'lid.coreMm', value: 80 },
    { field: 'lid.targetM2KPerW', value: 1.8 },
    { field: 'lid.deckMm', value: 4 },
    { field: 'lid.claddingMm', value: 4 },
    { field: 'lid.liningMm', value: 4 },
    { field: 'floor.coreMm', value: 40 },
    { field: 'floor.targetM2KPerW', value: 1 },
    { field: 'floor.dropAngleDeg', value: 30 },
    { field: 'stand.form', value: 'legs' },
    { field: 'stand.workingHeightMm', value: 850 },
    { field: 'stand.legWidthMm', value: 60 },
    { field: 'colony.strength', value: 'strong' },
    { field: 'colony.storesKg', value: 20 },
    { field: 'keeper.comfortableLiftKg', value: 8 },
    { field: 'keeper.elbowHeightMm', value: 1050 },
    { field: 'keeper.people', value: 1 },
    { field: 'shop.tools', value: 'table-saw' },
    { field: 'shop.ripLimitMm', value: 1200 },
    { field: 'shop.longestBoardMm', value: 2400 },
  ],
)

/** The hive's measures alone, for checks that need no parts. */
export const measured = (design: Design) => {
  const row = layRow(design)
  return { row, dimensions: measureHive(design, row), parts: [] }
}

/** Hive and report of a design that can be built. */
export const reportOn = (design: Design): Report => {
  const result = deriveHive(design)
  if (result.kind === 'refused') throw new Error(result.refusals[0]?.message)
  return runReports(design, result.hive)
}

export const findCheck = (checks: readonly Check[], id: string): Check => {
  const check = checks.find((candidate) => candidate.id === id)
  if (check === undefined) throw new Error(`There is no check called ${id}.`)
  return check
}
