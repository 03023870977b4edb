import type { SchemeAnswer } from './fieldAnswer.ts'
import type { FieldGrid } from './fieldGrid.ts'
import type { World } from './world.ts'

/** The coldest environment's temperature, °C: the zero to solve from, so that figures stay small. */
export const coldestOf = (world: World): number =>
  world.environments.reduce((least, e) => Math.min(least, e.temperatureC), Number.POSITIVE_INFINITY)

/** The same world with all its air warmer by `byK`. */
export const warmWorld = (world: World, byK: number): World => ({
  ...world,
  environments: world.environments.map((e) => ({ ...e, temperatureC: e.temperatureC + byK })),
})

export const warmGrid = (grid: FieldGrid, byK: number): FieldGrid => ({
  ...grid,
  temperatureC: grid.temperatureC.map((t) => t + byK),
})

/** The answer for air warmer by `byK`: heat and conductance stay, temperatures rise. */
export const warmAnswer = (answer: SchemeAnswer, byK: number): SchemeAnswer => {
  const { meanC, leastC } = answer.faces
  return {
    ...answer,
    faces: {
      ...answer.faces,
      ...(meanC && { meanC: meanC.map((t) => t + byK) }),
      ...(leastC && { leastC: leastC.map((t) => t + byK) }),
    },
    grid: answer.grid && warmGrid(answer.grid, byK),
  }
}
