import { FINISHES } from '../../../catalog/finishes.ts'
import type { Design } from '../../../design/schema.ts'
import type { FinishPlan } from './fastenerReport.ts'
import type { Members } from './members.ts'

/** The outside's finish: area, litres and the days before bees; undefined when it stays bare. */
export const planFinish = (design: Design, members: Members): FinishPlan | undefined => {
  const row = FINISHES.find(({ id }) => id === design.shop.finish)
  if (row === undefined) return undefined
  const areaM2 = outsideAreaM2(members)
  const { id, name, coats, curingDays, advice, source } = row
  return {
    id,
    name,
    areaM2: Math.round(areaM2 * 100) / 100,
    coats,
    litres: Math.ceil(((areaM2 * coats) / row.coverageM2PerL) * 20) / 20,
    curingDays,
    advice,
    source,
  }
}

/** Faces of wood and sheets that look outdoors, m²: one face of boards, all round of stand and handle. */
const outsideAreaM2 = ({ all }: Members): number => {
  let mm2 = 0
  for (const { part, kind } of all) {
    if (kind === 'thin' || part.bought) continue
    const { length, width, thickness } = part.size
    const { id } = part
    if (part.group === 'stand' || id === 'lid/handle' || id.startsWith('openings/landing-')) {
      mm2 += 2 * (length * width + length * thickness + width * thickness)
    } else if (
      id.includes('-wall/cladding') ||
      id === 'floor/cladding' ||
      id.startsWith('lid/rim-')
    ) {
      mm2 += length * width
    } else if (id.startsWith('roof/closer-') || id === 'rim/hinge-rail') {
      mm2 += length * (width + thickness)
    } else if (id === 'roof/deck') {
      // Edges and the overhang's underside; the cover sheet keeps its top dry.
      mm2 += 2 * (length + width) * (thickness + 40)
    }
  }
  return mm2 / 1e6
}
