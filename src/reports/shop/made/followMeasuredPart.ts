import type { Design } from '../../../design/schema.ts'
import { setField } from '../../../design/setField.ts'
import { deriveHive } from '../../../hive/deriveHive.ts'
import type { Part } from '../../../hive/part.ts'
import { type AbsorbField, absorbFields } from './absorbFields.ts'
import { absorbWords } from './absorbWords.ts'
import type { MadeRemedy } from './madeReport.ts'
import { isSameSize, partSize, type Side, type Size, withSide } from './partSize.ts'
import { solveField } from './solveField.ts'
import { type Bench, compareRemedies, layOutBench, weighRemedy } from './weighRemedy.ts'

/**
 * The fields that can make a part's finished size equal to the size that it was cut to, best first:
 * none that newly fails a check before one that does, then those that move few other rows, then the
 * smallest change. The part's other sides and all made parts stay as they are. `target` is a label of
 * the cut list or some ids of its parts. Empty when nothing does it, and for a design that can't be
 * built. Takes about 100 ms for an ordinary hive.
 */
export const followMeasuredPart = (
  design: Design,
  target: string | readonly string[],
  side: Side,
  measuredMm: number,
): readonly MadeRemedy[] => {
  const bench = layOutBench(design)
  return bench === undefined ? [] : findAbsorbing(bench, target, side, measuredMm)
}

/** The same for a hive that is laid out already. */
export const findAbsorbing = (
  bench: Bench,
  target: string | readonly string[],
  side: Side,
  measuredMm: number,
): readonly MadeRemedy[] => {
  const ids = typeof target === 'string' ? idsOfRow(bench, target) : target
  const [first] = ids
  const part = first === undefined ? undefined : bench.partById.get(first)
  if (part === undefined || part.bought) return []
  const planned = partSize(part)
  const goal = withSide(planned, side, { mm: measuredMm, hasGrain: part.grain !== 'none' })
  if (isSameSize(goal, planned)) return []
  return absorbFields(bench.design, { group: part.group, side })
    .flatMap((field) => {
      const value = solveFor(bench, part, field, goal)
      if (value === undefined) return []
      const changeMm = value - field.valueMm
      const remedy = weighRemedy(bench, {
        text: absorbWords(field.path, changeMm),
        changes: [{ field: field.path, value }],
        isRight: (partById) =>
          ids.every((id) => {
            const then = partById.get(id)
            return then !== undefined && isSameSize(partSize(then), goal)
          }),
      })
      return remedy === undefined ? [] : [{ remedy, changeMm }]
    })
    .sort(compareRemedies)
    .map(({ remedy }) => remedy)
}

const idsOfRow = ({ report }: Bench, label: string): readonly string[] =>
  report.shop.cutList.find((row) => row.label === label)?.partIds ?? []

/** To a hundredth if that is still right: nobody types more. */
const tidy = (value: number): number => {
  const short = Math.round(value * 100) / 100
  return Math.abs(short - value) < 0.004 ? short : value
}

const solveFor = (
  bench: Bench,
  part: Part,
  { path, field, valueMm }: AbsorbField,
  goal: Size,
): number | undefined => {
  const planned = partSize(part)
  // The side that must move; without grain it need not be the side that was measured.
  const side = goal.findIndex((mm, i) => Math.abs(mm - (planned[i] ?? 0)) > 1e-6)
  const few = withFewFrames(bench.design, part)
  const measure = (value: number): number | undefined => {
    const result = deriveHive(setField(few, path, value).design)
    if (result.kind === 'refused') return undefined
    const found = result.hive.parts.find(({ id }) => id === part.id)
    return found === undefined ? undefined : partSize(found)[side]
  }
  const value = solveField(
    measure,
    { value: valueMm, size: planned[side] ?? 0 },
    goal[side] ?? 0,
    field,
  )
  return value === undefined ? undefined : tidy(value)
}

/**
 * The same hive with only a few frames hung yet: no other part changes, and it takes a third of the
 * time to lay out. Top bars that touch close the hive, so there all must hang.
 */
const withFewFrames = (design: Design, { group, index }: Part): Design => {
  const { frames, closure } = design.cavity
  if (closure === 'touching') return design
  const hung = group === 'frames' ? Math.max(2, (index ?? frames) + 1) : 2
  return { ...design, cavity: { ...design.cavity, emptyPlaces: Math.max(0, frames - hung) } }
}
