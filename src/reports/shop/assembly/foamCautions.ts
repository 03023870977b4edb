import { materialById } from '../../../catalog/materials.ts'
import type { StageFacts } from './stage.ts'

/** Cautions for pieces of foam; wool and fibre need none. */
export const foamCautions = ({ parts }: StageFacts): readonly string[] =>
  parts.some(
    (p) => p.id.includes('/insulation') && materialById(p.material).surface.startsWith('foam'),
  )
    ? ['hot-wire', 'foam-closed-in']
    : []
