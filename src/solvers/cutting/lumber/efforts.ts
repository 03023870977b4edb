import type { FillEffort } from './fillPurchase.ts'

/** For each purchase as the ladder comes to it. */
export const QUICK: FillEffort = {
  randomFills: 2,
  dive: { detours: 1, mostPrograms: 25, patience: 6, endSteps: 2000 },
  repair: {
    attempts: 12,
    dive: { detours: 1, mostPrograms: 6, patience: 3, endSteps: 2000 },
  },
  searchSteps: 0,
}

/** For the few that stayed open. */
export const THOROUGH: FillEffort = {
  randomFills: 20,
  dive: { detours: 3, mostPrograms: 150, patience: 20, endSteps: 20_000 },
  repair: {
    attempts: 200,
    dive: { detours: 2, mostPrograms: 12, patience: 6, endSteps: 4000 },
  },
  searchSteps: 300_000,
}

/** For what only makes an equally cheap plan handier. */
export const LIGHT: FillEffort = {
  randomFills: 1,
  dive: { detours: 1, mostPrograms: 10, patience: 3, endSteps: 1000 },
  repair: {
    attempts: 4,
    dive: { detours: 1, mostPrograms: 4, patience: 2, endSteps: 1000 },
  },
  searchSteps: 0,
}
