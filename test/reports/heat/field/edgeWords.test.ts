import { describe, expect, it } from 'vitest'
import { allEdgesWords, edgeWords } from '../../../../src/reports/heat/field/edgeWords.ts'
import type { EdgeLoss } from '../../../../src/reports/heat/field/heatFieldAnswer.ts'

const edge = (id: EdgeLoss['id'], asWallM2: number): EdgeLoss => ({
  ...{ id, name: '', lengthM: 1, extraWPerK: 1, psiWPerMK: 1, asWallM2 },
})

describe('edgeWords', () => {
  it('tells what an edge costs as an area of wall, in the units shown', () => {
    expect(edgeWords(edge('corners', 0.2), 'mm')).toBe(
      'The corners cost as much as another 0.20 m² of wall.',
    )
    // 0.2 m² over 0.0929 m² a square foot.
    expect(edgeWords(edge('wall-lid', 0.2), 'in')).toBe(
      'The edges where walls and lid meet cost as much as another 2.2 ft² of wall.',
    )
  })

  it('says so when an edge costs nothing, or less than that', () => {
    expect(edgeWords(edge('entrances', 0.004), 'mm')).toBe(
      'The entrances and vents cost next to nothing.',
    )
    expect(edgeWords(edge('wall-floor', -0.1), 'mm')).toBe(
      'The edges where walls and floor meet save as much as 0.10 m² of wall loses.',
    )
  })
})

describe('allEdgesWords', () => {
  it('adds all kinds up', () => {
    const edges = [edge('corners', 0.2), edge('wall-lid', 0.5), edge('wall-floor', -0.1)]
    expect(allEdgesWords(edges, 'mm')).toBe(
      'All edges and corners together cost as much as another 0.60 m² of wall.',
    )
    expect(allEdgesWords([...edges, edge('entrances', 0.1)], 'mm')).toBe(
      'All edges, corners and openings together cost as much as another 0.70 m² of wall.',
    )
  })
})
