import { formatArea } from '../../../units/area.ts'
import type { LengthUnit } from '../../../units/length.ts'
import type { EdgeLoss } from './heatFieldAnswer.ts'

/** What one kind of edge costs: `The corners cost as much as another 0.21 m² of wall.` */
export const edgeWords = ({ id, asWallM2 }: EdgeLoss, unit: LengthUnit): string =>
  costWords(SUBJECT[id], asWallM2, unit)

/** The same for all kinds together. */
export const allEdgesWords = (edges: readonly EdgeLoss[], unit: LengthUnit): string =>
  costWords(
    edges.some(({ id }) => id === 'entrances')
      ? 'All edges, corners and openings together'
      : 'All edges and corners together',
    edges.reduce((sum, { asWallM2 }) => sum + asWallM2, 0),
    unit,
  )

const costWords = (subject: string, asWallM2: number, unit: LengthUnit): string => {
  if (Math.abs(asWallM2) < NOTHING_M2) return `${subject} cost next to nothing.`
  const area = formatArea(Math.abs(asWallM2), unit)
  return asWallM2 > 0
    ? `${subject} cost as much as another ${area} of wall.`
    : `${subject} save as much as ${area} of wall loses.`
}

/** Less than a postcard, m². */
const NOTHING_M2 = 0.01

const SUBJECT: Readonly<Record<EdgeLoss['id'], string>> = {
  corners: 'The corners',
  'wall-lid': 'The edges where walls and lid meet',
  'wall-floor': 'The edges where walls and floor meet',
  entrances: 'The entrances and vents',
}
