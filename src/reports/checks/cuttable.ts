import { ownValue } from '../../design/json.ts'
import type { Design } from '../../design/schema.ts'
import type { ShopReport } from '../shop/computeShop.ts'
import type { CuttingProblem } from '../shop/cutting/cuttingPlan.ts'
import { assess } from './assess.ts'
import type { Check, FieldChange, Fix } from './check.ts'
import { proposeFix } from './proposeFix.ts'

interface Context {
  readonly design: Design
  readonly shop: Pick<ShopReport, 'cutList' | 'cutting'>
}

/** Whether all parts can be cut from the boards and sheets that can be had. */
export const checkCuttable = ({ design, shop }: Context): readonly Check[] => {
  const { problems } = shop.cutting
  const labels = new Set(problems.flatMap((problem) => problem.labels))
  const [first] = problems
  const check = assess({
    id: 'cuttable',
    title: 'Kinds of part that can not be cut from what can be had',
    quantity: 'count',
    measured: Math.max(labels.size, problems.length),
    band: { high: 0, fixAbove: 0 },
    why: first?.message ?? 'Every part can be cut from what can be had.',
    source: 'your own stock, and the usual sizes of the catalogue',
    fix: () => findFix(design, problems),
    partIds: shop.cutList
      .filter(({ label }) => labels.has(label))
      .flatMap(({ partIds }) => partIds.slice(0, 1))
      .slice(0, 4),
  })
  return [check]
}

/** For each problem the first remedy that is an edit, together; none when one of them has no edit. */
const findFix = (design: Design, problems: readonly CuttingProblem[]): Fix | undefined => {
  const texts = new Set<string>()
  const valueByField = new Map<string, FieldChange['value']>()
  for (const { remedies } of problems) {
    const remedy = remedies.find(({ changes = [] }) => changes.length > 0)
    if (remedy === undefined) return undefined
    texts.add(remedy.text)
    for (const { field, value } of remedy.changes ?? []) {
      const other = valueByField.get(field)
      valueByField.set(field, other === undefined ? value : further(design, field, [other, value]))
    }
  }
  const changes = [...valueByField].map(([field, value]) => ({ field, value }))
  return proposeFix([...texts].join(' '), changes)
}

/** Of two values of a field the one that is further from the present: it cures what the other does. */
const further = (
  design: Design,
  field: string,
  [a, b]: readonly [FieldChange['value'], FieldChange['value']],
): FieldChange['value'] => {
  const present: unknown = field.split('.').reduce<unknown>(ownValue, design)
  if (typeof a !== 'number' || typeof b !== 'number' || typeof present !== 'number') return b
  return Math.abs(a - present) > Math.abs(b - present) ? a : b
}
