import fc from 'fast-check'
import type { Block, Contact, Six, Triple, World } from '../../../src/solvers/conduction/world.ts'

/** Side of the smallest box that these worlds are made of, m: exact in binary, so that they shift exactly. */
const STEP_M = 1 / 32

// Foam, wood, plastic, a heavy metal bar, and a metal that conducts a million times as well as foam.
const CONDUCTIVITIES = [0.034, 0.12, 1, 50, 34000] as const

/**
 * Small worlds of boxes: a body from corner to corner of up to `steps` in each direction, blocks that
 * overlap it and each other and may stick out of it, and pockets of air that leave a way round. Cold
 * air touches one side, by default at times without a surface resistance, and warm air the opposite one.
 */
export const arbitraryWorld = (
  steps: number,
  coldFilms: readonly number[] = [0, 0.04, 0.1],
): fc.Arbitrary<World> =>
  fc
    .record({
      body: fc.tuple(size(2, steps - 1), size(2, steps - 1), size(2, steps - 1)),
      conductivity: fc.constantFrom(...CONDUCTIVITIES),
      extra: fc.array(arbitrarySolid(steps), { maxLength: 4 }),
      pockets: fc.array(arbitraryPocket(steps), { maxLength: 2 }),
      coldC: fc.constantFrom(0, -10, 5),
      warmC: fc.constantFrom(1, 20, 35),
      coldFilms: films(fc.constantFrom(...coldFilms)),
      warmFilms: films(fc.constantFrom(0.04, 0.1, 0.13, 0.25)),
      background: fc.constantFrom<Contact>(0, 'adiabatic'),
      axis: fc.constantFrom(0, 1, 2),
      across: fc.tuple(contact, contact, contact, contact),
    })
    .map((given): World => {
      const { body, axis, across } = given
      const ends: readonly Contact[] = [0, 1]
      const around = across.slice()
      const beyond = [0, 1, 2].flatMap((a) =>
        a === axis ? ends : [around.shift() ?? 'adiabatic', around.shift() ?? 'adiabatic'],
      )
      // Blocks stick out of the body only across the axis: warm air keeps a side of the body.
      const inside = (block: Block): Block => ({
        ...block,
        maxM: cutAt(block.maxM, axis, body[axis] ?? 0),
      })
      return {
        blocks: [
          solid([0, 0, 0], body, given.conductivity),
          ...given.extra.map(inside),
          ...given.pockets.map(inside),
        ].filter(hasRoom),
        environments: [
          { temperatureC: given.coldC, surfaceResistanceM2KPerW: given.coldFilms },
          // 5 + 20 and the like: never as warm as the cold air.
          {
            temperatureC: given.warmC + given.coldC + 1,
            surfaceResistanceM2KPerW: given.warmFilms,
          },
        ],
        background: given.background,
        beyond: beyond as unknown as Six<Contact>,
      }
    })

type Steps = readonly [number, number, number]

const size = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max })

const contact = fc.constantFrom<Contact>(0, 1, 'adiabatic')

const films = (one: fc.Arbitrary<number>): fc.Arbitrary<Six<number>> =>
  fc.tuple(one, one, one, one, one, one)

const metres = ([x, y, z]: Steps): Triple => [x * STEP_M, y * STEP_M, z * STEP_M]

const solid = (from: Steps, to: Steps, conductivityWPerMK: number): Block => ({
  kind: 'solid',
  minM: metres(from),
  maxM: metres(to),
  conductivityWPerMK,
})

/** Starts in the body, which is at least two steps wide, so that it hangs together with it. */
const arbitrarySolid = (steps: number): fc.Arbitrary<Block> =>
  fc
    .record({
      from: fc.tuple(size(0, 1), size(0, 1), size(0, 1)),
      to: fc.tuple(size(2, steps), size(2, steps), size(2, steps)),
      conductivity: fc.constantFrom(...CONDUCTIVITIES),
    })
    .map(({ from, to, conductivity }) => solid(from, to, conductivity))

/** One step long in one direction at least, so that matter is left beside it. */
const arbitraryPocket = (steps: number): fc.Arbitrary<Block> =>
  fc
    .record({
      from: fc.tuple(size(0, steps - 2), size(0, steps - 2), size(0, steps - 2)),
      environment: fc.constantFrom(0, 1),
    })
    .map(({ from, environment }) => ({
      kind: 'air',
      minM: metres(from),
      maxM: metres([from[0] + 1, from[1] + 1, from[2] + 1]),
      environment,
    }))

const cutAt = ([x, y, z]: Triple, axis: number, steps: number): Triple => {
  const most = (value: number, a: number): number =>
    a === axis ? Math.min(value, steps * STEP_M) : value
  return [most(x, 0), most(y, 1), most(z, 2)]
}

const hasRoom = ({ minM, maxM }: Block): boolean => minM.every((from, a) => from < (maxM[a] ?? 0))
