import { materialById } from '../../catalog/materials.ts'
import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import { assess } from './assess.ts'
import type { Check } from './check.ts'
import { presentIds } from './presentIds.ts'
import { proposeFix } from './proposeFix.ts'

interface Context {
  readonly design: Pick<Design, 'lid'>
  readonly hive: Pick<Hive, 'parts'>
}

/** Least slope of a cover, degrees: sheet metal 1 in 20, felt and boards 1 in 10, membrane in one piece. */
const LEAST_SLOPE: ReadonlyMap<string, number> = new Map([
  ['bitumen-felt', 6],
  ['roofing-membrane', 1],
])
const LEAST_SLOPE_METAL = 3

/** How the roof sheds rain (rule R29). */
export const checkRoof = (context: Context): readonly Check[] => [
  checkOverhang(context),
  checkSlope(context),
]

const checkOverhang = ({ design, hive }: Context): Check =>
  assess({
    id: 'roof-overhang',
    title: 'Overhang of the roof',
    quantity: 'length',
    measured: design.lid.overhangMm,
    band: { low: 30, high: 80 },
    why: 'A short roof lets rain run down the walls; a long one catches the wind.',
    source: 'Bertrand, La conduite du rucher, p. 273: 60 to 80 mm; lower limit from memory',
    fix: () => proposeFix('Make the overhang 40 mm', [{ field: 'lid.overhangMm', value: 40 }]),
    partIds: presentIds(hive.parts, ['roof/cover-sheet']),
  })

const checkSlope = ({ design, hive }: Context): Check => {
  const { form, slopeDeg, coverMaterial } = design.lid
  const least = LEAST_SLOPE.get(coverMaterial) ?? LEAST_SLOPE_METAL
  return assess({
    id: 'roof-slope',
    title: 'Slope of the roof',
    quantity: 'angle',
    measured: form === 'flat' ? 0 : slopeDeg,
    band: { low: least },
    why: `Water stands on a roof that is too flat; ${materialById(coverMaterial).name.toLowerCase()} needs at least ${least} degrees.`,
    source: 'from memory: sheet metal 1 in 20, felt and boards 1 in 10',
    fix: () =>
      proposeFix(`Slope the roof by ${Math.max(least, slopeDeg)} degrees`, [
        ...(form === 'flat' ? [{ field: 'lid.form', value: 'sloped' }] : []),
        ...(slopeDeg < least ? [{ field: 'lid.slopeDeg', value: least }] : []),
      ]),
    partIds: presentIds(hive.parts, ['roof/cover-sheet', 'roof/deck']),
  })
}
