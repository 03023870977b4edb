import type { Axis } from '../../geometry/vector.ts'

/**
 * One way to lay a part on the bench: `axes[i]` is the world axis that becomes the bench axis i
 * (0 length, 1 width, 2 thickness), `signs[i]` is -1 where it is turned round.
 */
export interface Turn {
  readonly axes: readonly [Axis, Axis, Axis]
  readonly signs: readonly [1 | -1, 1 | -1, 1 | -1]
  /** True for a turn that a hand can make, false for one that only a mirror can. */
  readonly proper: boolean
}

type Order = readonly [Axis, Axis, Axis]

const EVEN_ORDERS: readonly Order[] = [
  ['x', 'y', 'z'],
  ['y', 'z', 'x'],
  ['z', 'x', 'y'],
]
const ODD_ORDERS: readonly Order[] = [
  ['x', 'z', 'y'],
  ['z', 'y', 'x'],
  ['y', 'x', 'z'],
]
const SIGNS = [1, -1] as const

const turnsOf = (axes: Order, parity: 1 | -1): readonly Turn[] =>
  SIGNS.flatMap((a) =>
    SIGNS.flatMap((b) =>
      SIGNS.map((c): Turn => ({ axes, signs: [a, b, c], proper: a * b * c * parity === 1 })),
    ),
  )

/** All 48 ways to lay a box square on the bench; half of them proper. */
export const ALL_TURNS: readonly Turn[] = [
  ...EVEN_ORDERS.flatMap((order) => turnsOf(order, 1)),
  ...ODD_ORDERS.flatMap((order) => turnsOf(order, -1)),
]

/** The six orders of the axes. */
export const AXIS_ORDERS: readonly Order[] = [...EVEN_ORDERS, ...ODD_ORDERS]
