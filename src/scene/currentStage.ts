import type { Stage } from './stage.ts'

let current: Stage | undefined

/** Makes a stage the one that pictures are taken of; undefined when it leaves the screen. */
export const setCurrentStage = (stage: Stage | undefined): void => {
  current = stage
}

/** The stage on the screen; undefined when there is none, for one without WebGL. */
export const findCurrentStage = (): Stage | undefined => current
