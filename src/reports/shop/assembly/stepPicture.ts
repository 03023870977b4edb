import type { AssemblyReport, AssemblyStep, StepView } from './assemblyReport.ts'

/** What a step's picture shows: parts that are there already, parts that are new, and from where. */
export interface StepPicture {
  readonly solid: readonly string[]
  readonly fresh: readonly string[]
  readonly view: StepView
}

/**
 * The picture of the step at `index`, counted from 0; undefined when there is no such step. What is
 * built on the bench stands alone; what goes into the hive is shown without the lid.
 */
export const stepPicture = (
  { steps }: Pick<AssemblyReport, 'steps'>,
  index: number,
): StepPicture | undefined => {
  const step = steps[index]
  if (step === undefined) return undefined
  const drawn = [...step.partIds, ...step.worksOn]
  const fresh = step.pictured.length > 0 ? step.pictured : drawn
  const isFresh = new Set(drawn)
  const solid = steps
    .slice(0, index)
    .filter((earlier) => isShown(earlier, step))
    .flatMap((earlier) => earlier.partIds)
    .filter((id) => !isFresh.has(id))
  return { solid, fresh, view: step.view }
}

/** `loose` frames lie on the bench until they are hung, in a step that has them as its own. */
const isShown = (earlier: AssemblyStep, now: AssemblyStep): boolean => {
  switch (now.scope) {
    case 'unit':
      return earlier.unit === now.unit
    case 'hive':
      return true
    case 'open-hive':
      return earlier.unit !== 'lid'
  }
}
