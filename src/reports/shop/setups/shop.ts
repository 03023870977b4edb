import type { Design } from '../../../design/schema.ts'

/** What the set-ups hang on. */
export type Shop = Pick<Design['shop'], 'tools' | 'ripLimitMm' | 'guideOffsetMm'>
