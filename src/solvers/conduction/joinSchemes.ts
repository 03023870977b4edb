import type { FieldAnswer, SchemeAnswer } from './fieldAnswer.ts'

/**
 * Joins the two schemes' answers to one question. Heat is the mean of both, whose errors have opposite
 * signs; temperatures of surfaces are the vertices'.
 */
export const joinSchemes = (cell: SchemeAnswer, vertex: SchemeAnswer): FieldAnswer => {
  const { meanC, leastC } = vertex.faces
  if (vertex.grid === undefined || meanC === undefined || leastC === undefined) {
    throw new Error('joinSchemes: the second answer is not of the vertex scheme')
  }
  const { faces } = cell
  const heatW = new Float64Array(faces.count)
  const environmentHeatW: number[] = []
  for (let f = 0; f < faces.count; f++) {
    const own = faces.heatW[f] ?? 0
    const other = vertex.faces.heatW[f] ?? 0
    const heat = (own + other) / 2
    const environment = faces.environment[f] ?? 0
    heatW[f] = heat
    while (environmentHeatW.length <= environment) environmentHeatW.push(0)
    environmentHeatW[environment] = (environmentHeatW[environment] ?? 0) + heat
  }
  const [lowerWPerK, upperWPerK] = [cell.boundWPerK, vertex.boundWPerK]
  return {
    conductanceWPerK: meanWithin(cell, vertex),
    lowerWPerK,
    upperWPerK,
    faces: { ...faces, heatW, meanC, leastC },
    grid: vertex.grid,
    environmentHeatW,
    cellUnknowns: cell.unknowns,
    vertexUnknowns: vertex.unknowns,
    cellIterations: cell.iterations,
    vertexIterations: vertex.iterations,
    relativeResidual: Math.max(cell.relativeResidual, vertex.relativeResidual),
    hasConverged: cell.hasConverged && vertex.hasConverged,
    bytesPerUnknown: Math.max(cell.bytesPerUnknown, vertex.bytesPerUnknown),
    mirrorPlanes: cell.mirrorPlanes,
  }
}

/** The mean of the estimates; rounding may not push it out of the band. */
const meanWithin = (cell: SchemeAnswer, vertex: SchemeAnswer): number | undefined => {
  if (cell.estimateWPerK === undefined || vertex.estimateWPerK === undefined) return undefined
  const mean = (cell.estimateWPerK + vertex.estimateWPerK) / 2
  return Math.min(vertex.boundWPerK ?? mean, Math.max(cell.boundWPerK ?? mean, mean))
}
