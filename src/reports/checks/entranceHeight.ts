import type { Design, EntranceDesign } from '../../design/schema.ts'
import { assess, type Band, distanceOutside } from './assess.ts'
import type { Check } from './check.ts'
import { proposeFix } from './proposeFix.ts'

/** Slots: loaded bees and drones need 6 mm; mice pass a little over 8. Round holes may be larger. */
const SLOT: Band = { low: 6, high: 8, fixBelow: 5.5, fixAbove: 10 }
const HOLE: Band = { low: 6, high: 10, fixBelow: 5.5, fixAbove: 10 }
const SAFE_SLOT_MM = 7
const SAFE_HOLE_MM = 9.5

const bandOf = ({ form }: EntranceDesign): Band => (form === 'slot' ? SLOT : HOLE)
const isOutside = (entrance: EntranceDesign): boolean =>
  distanceOutside(bandOf(entrance), entrance.heightMm) > 0

/** Low enough to keep mice out, high enough for a drone (rule R22); the worst of all entrances. */
export const checkEntranceHeight = ({
  design,
}: {
  readonly design: Pick<Design, 'openings'>
}): readonly Check[] => {
  const { entrances } = design.openings
  const off = (e: EntranceDesign): number => distanceOutside(bandOf(e), e.heightMm)
  const worst = entrances.reduce<EntranceDesign | undefined>(
    (a, b) => (a === undefined || off(b) > off(a) ? b : a),
    undefined,
  )
  if (worst === undefined) return []
  return [
    assess({
      id: 'entrance-height',
      title: 'Height of the entrance',
      quantity: 'length',
      measured: worst.heightMm,
      band: bandOf(worst),
      why: 'Mice and shrews squeeze through a taller entrance in winter; drones stick in a lower one.',
      source: 'Bertrand, La conduite du rucher, p. 176 and 248; D. Cushman, 2001: 8 mm',
      fix: () =>
        proposeFix(
          'Make the entrances 7 mm high, or holes of 9.5 mm',
          entrances.flatMap((entrance, i) =>
            isOutside(entrance)
              ? [
                  {
                    field: `openings.entrances.${i}.heightMm`,
                    value: entrance.form === 'slot' ? SAFE_SLOT_MM : SAFE_HOLE_MM,
                  },
                ]
              : [],
          ),
        ),
    }),
  ]
}
