import type { Design } from '../design/schema.ts'
import type { HiveDimensions } from './dimensions.ts'
import type { Hive } from './hive.ts'

const JOINTS = {
  pegs: { name: 'Wooden pegs, 8 mm', each: 2 },
  screws: { name: 'Stainless screws for split frames', each: 2 },
  straps: { name: 'Stainless straps for split frames', each: 2 },
}

/** Bought things that have no place of their own in the model: pegs, chains, sealing strip. */
export const sundriesOf = (design: Design, d: HiveDimensions): Hive['sundries'] => {
  const joint = JOINTS[design.frame.joint]
  const split =
    design.frame.form === 'split'
      ? [
          {
            name: joint.name,
            count: joint.each * d.frameCentres.length,
            use: 'Joins the two halves of each frame',
          },
        ]
      : []
  const stay =
    design.lid.stay === 'chain'
      ? {
          name: 'Lid chain',
          count: 2,
          use: `Stops the lid at ${design.lid.openingAngleDeg} degrees`,
        }
      : {
          name: 'Latching lid prop',
          count: 1,
          use: `Holds the lid at ${design.lid.openingAngleDeg} degrees`,
        }
  return [...split, stay]
}
