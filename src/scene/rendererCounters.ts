import { findCurrentStage } from './currentStage.ts'

/** What the renderer did for its last frame, and holds. */
export interface RendererCounters {
  readonly calls: number
  readonly triangles: number
  readonly geometries: number
  readonly textures: number
  /** Frames drawn since the view appeared. */
  readonly frames: number
}

/** Undefined when there is no 3D view. Calls and triangles include the shadow map when it was drawn. */
export const readCounters = (): RendererCounters | undefined => {
  const info = findCurrentStage()?.renderer.info
  if (info === undefined) return undefined
  return {
    calls: info.render.calls,
    triangles: info.render.triangles,
    geometries: info.memory.geometries,
    textures: info.memory.textures,
    frames: info.render.frame,
  }
}
