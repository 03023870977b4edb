import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import type { Hive } from '../../../../src/hive/hive.ts'
import type { AssemblyReport } from '../../../../src/reports/shop/assembly/assemblyReport.ts'
import { computeAssembly } from '../../../../src/reports/shop/assembly/computeAssembly.ts'
import { cutList } from '../../../../src/reports/shop/cutList.ts'
import type {
  FastenerReport,
  FinishPlan,
} from '../../../../src/reports/shop/fasteners/fastenerReport.ts'
import type { CutListRow } from '../../../../src/reports/shop/shopReport.ts'

export interface Assembled {
  readonly hive: Hive
  readonly rows: readonly CutListRow[]
  readonly report: AssemblyReport
}

/** Three coats in all, invented for the tests. */
export const OIL: FinishPlan = {
  id: 'linseed-oil',
  name: 'Linseed oil',
  areaM2: 3,
  coats: 3,
  litres: 1,
  curingDays: 10,
  advice: '',
  source: 'invented',
}

/** The assembly of a design that can be built. */
export const assemble = (
  design: Design = DEFAULT_DESIGN,
  fasteners: Partial<FastenerReport> = {},
): Assembled => {
  const result = deriveHive(design)
  if (result.kind !== 'built') throw new Error('this design is refused')
  return assembleHive(design, result.hive, fasteners)
}

export const assembleHive = (
  design: Design,
  hive: Hive,
  fasteners: Partial<FastenerReport> = {},
): Assembled => {
  const rows = cutList(hive.parts)
  const question = { design, hive, cutList: rows, fasteners: { ...NO_FASTENERS, ...fasteners } }
  return { hive, rows, report: computeAssembly(question) }
}

const NO_FASTENERS: FastenerReport = {
  fastenings: [],
  loose: [],
  totals: [],
  hardware: [],
  adhesives: [],
  finish: undefined,
  drillBitsMm: [],
}
