/** What the outside of a hive is treated with. The inside always stays bare. */
export interface FinishRow {
  readonly id: 'linseed-oil' | 'water-paint' | 'wax-dip'
  readonly name: string
  readonly coats: number
  /** Of one coat on planed softwood; rough sawn wood takes up to twice as much. */
  readonly coverageM2PerL: number
  /** From the last coat until bees move in. */
  readonly curingDays: number
  readonly tinL: number
  readonly advice: string
  readonly source: string
}

export const FINISHES: readonly FinishRow[] = [
  {
    id: 'linseed-oil',
    name: 'Raw linseed oil',
    coats: 2,
    coverageM2PerL: 12,
    curingDays: 21,
    tinL: 1,
    advice:
      'Wipe off what is not taken up after half an hour. Lay oily rags flat outdoors to dry: in a heap they can catch fire. Use oil without drying metals or biocides.',
    source: 'common practice, from memory; low confidence',
  },
  {
    id: 'water-paint',
    name: 'Water-based outdoor paint, pale',
    coats: 2,
    coverageM2PerL: 10,
    curingDays: 14,
    tinL: 0.75,
    advice:
      'Outside only, no fungicide or insecticide. Dry to the touch is not cured: let it air until nothing smells.',
    source: 'common practice, from memory: 2 to 4 weeks to cure',
  },
  {
    id: 'wax-dip',
    name: 'Hot wax, for dipping or brushing on',
    coats: 1,
    coverageM2PerL: 4,
    curingDays: 2,
    tinL: 1,
    advice:
      'Only bare wood before foam and glue go in: wax at 140 degrees melts foam. Heat it outdoors in a double pan, never over a flame.',
    source: 'common practice, from memory; low confidence',
  },
]
