import type { Contact, MeshSpec, World } from './world.ts'
import { WorldError } from './worldError.ts'

/** Most blocks that a world may have: their numbers must fit 16 bits beside a few codes. */
const MOST_BLOCKS = 60_000

/** Throws a `WorldError` for the first thing in the world or mesh that no solver could work with. */
export const checkWorld = (world: World, mesh: MeshSpec): void => {
  const { blocks, environments, background, beyond } = world
  if (blocks.length === 0) fail('There are no blocks. Give at least one block of matter.')
  if (blocks.length > MOST_BLOCKS) fail(`There are more than ${MOST_BLOCKS} blocks. Join some.`)
  const isKnown = (contact: Contact) =>
    contact === 'adiabatic' || environments[contact] !== undefined
  if (![background, ...beyond].every(isKnown)) {
    fail('The background or a side names an environment that is not in the list.')
  }
  blocks.forEach((block, i) => {
    const name = `Block ${i + 1}`
    if (![...block.minM, ...block.maxM].every(Number.isFinite)) {
      fail(`${name} has a size that is not a number.`)
    }
    if (block.kind === 'air') {
      if (!isKnown(block.environment)) fail(`${name} names an environment that is not in the list.`)
    } else if (!(block.conductivityWPerMK > 0 && Number.isFinite(block.conductivityWPerMK))) {
      fail(`${name} needs a conductivity above 0 W/(m·K); it has ${block.conductivityWPerMK}.`)
    }
  })
  environments.forEach(({ temperatureC, riseKPerM = 0, surfaceResistanceM2KPerW: rs }, i) => {
    const name = `Environment ${i + 1}`
    if (!Number.isFinite(temperatureC) || !Number.isFinite(riseKPerM)) {
      fail(`${name} has a temperature that is not a number.`)
    }
    if (!rs.every((r) => r >= 0 && Number.isFinite(r))) {
      fail(`${name} has a surface resistance that is not a number from 0 up.`)
    }
  })
  const { leastCellM, growth, greatestCellM, cellsPerGap, mergeM } = mesh
  const isSound =
    leastCellM > 0 && growth >= 1 && greatestCellM > 0 && cellsPerGap >= 1 && mergeM >= 0
  if (!isSound) fail('The mesh needs cells wider than 0 m that do not shrink away from the faces.')
}

const fail = (message: string): never => {
  throw new WorldError(message)
}
