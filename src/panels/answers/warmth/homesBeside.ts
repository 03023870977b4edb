import type { BaselineAnswer } from '../../../reports/heat/field/heatComparisons.ts'
import type { HeatFieldAnswer } from '../../../reports/heat/field/heatFieldAnswer.ts'
import type { SavedDesign } from '../../../store/savedDesigns.ts'

/** One line of the comparison. */
export interface Home {
  readonly id: string
  readonly kind: 'this' | 'baseline' | 'saved'
  readonly name: string
  readonly about: string
  /** Undefined while it has not been worked out. */
  readonly figures: HomeFigures | undefined
}

export interface HomeFigures {
  readonly conductanceWPerK: number
  readonly lowerWPerK: number
  readonly upperWPerK: number
  readonly volumeL: number | undefined
}

/** The id under which a saved design's figures come back. */
export const savedBaselineId = (saved: Pick<SavedDesign, 'id'>): string => `saved-${saved.id}`

/** This hive, the other homes and the saved designs, the warmest first; those without figures last. */
export const homesBeside = (
  answer: Pick<HeatFieldAnswer, 'conductanceWPerK' | 'lowerWPerK' | 'upperWPerK'> | undefined,
  baselines: readonly BaselineAnswer[],
  saved: readonly SavedDesign[],
): readonly Home[] => {
  const own: readonly Home[] = answer
    ? [
        {
          id: 'this',
          kind: 'this',
          name: 'This hive',
          about: '',
          figures: {
            conductanceWPerK: answer.conductanceWPerK,
            lowerWPerK: answer.lowerWPerK,
            upperWPerK: answer.upperWPerK,
            volumeL: undefined,
          },
        },
      ]
    : []
  const kept = saved.map((design): Home => {
    const found = baselines.find(({ id }) => id === savedBaselineId(design))
    // Their own name may carry a number that tells two of the same name apart.
    return { id: design.id, kind: 'saved', name: design.name, about: '', figures: found }
  })
  const fixed = baselines
    // A design just taken out of the list may still be among the figures.
    .filter(({ id }) => !id.startsWith('saved-'))
    .map((b): Home => ({ id: b.id, kind: 'baseline', name: b.name, about: b.about, figures: b }))
  return [...own, ...fixed, ...kept].sort((a, b) => lossOf(a) - lossOf(b))
}

// Not Infinity: the difference of two would not be a number.
const lossOf = ({ figures }: Home): number => figures?.conductanceWPerK ?? Number.MAX_VALUE
