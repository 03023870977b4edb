/** Comb of 1 dm², both faces full and capped, spacing 35 to 37 mm: Bertrand, La conduite du rucher, p. 168. */
const HONEY_KG_PER_DM2 = 1 / 3

/** Both faces, worker cells 5.3 mm wide: 2.309 n² with n cells in 10 cm (Betts, Bee World, 1938). */
const CELLS_PER_DM2 = 822

/** 2.6 lb of wax for 100,000 cells (beehivejournal.blogspot.com, cell size facts, 2010). */
const WAX_KG_PER_CELL = 11.8e-6

/** Honey in comb that is full and capped, kg. */
export const honeyKg = (combDm2: number): number => combDm2 * HONEY_KG_PER_DM2

/** Wax of drawn comb with its foundation, kg. */
export const combWaxKg = (combDm2: number): number => combDm2 * CELLS_PER_DM2 * WAX_KG_PER_CELL
