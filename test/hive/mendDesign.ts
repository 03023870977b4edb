import type { Design } from '../../src/design/schema.ts'
import { seatBoards } from '../../src/design/seatBoards.ts'
import { setField } from '../../src/design/setField.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import type { Hive } from '../../src/hive/hive.ts'
import type { Refusal } from '../../src/hive/refusal.ts'

export interface Built {
  readonly design: Design
  readonly hive: Hive
}

/**
 * Does what the refusals say, one after another, until the hive can be built: takes each suggested
 * number, and where none is given leaves out what is in the way. `undefined` after 60 tries.
 */
export const mendDesign = (design: Design): Built | undefined => {
  let mended = design
  for (let tries = 0; tries < 60; tries += 1) {
    const result = deriveHive(mended)
    if (result.kind === 'built') return { design: mended, hive: result.hive }
    const [first] = result.refusals
    if (first === undefined) return undefined
    mended = obey(mended, first)
  }
  return undefined
}

const obey = (design: Design, { field, suggestion }: Refusal): Design => {
  if (suggestion !== undefined) return setField(design, field, suggestion).design
  const { openings } = design
  const [group, list, index] = field.split('.')
  const without = <O>(name: string, all: readonly O[]): readonly O[] =>
    all.filter((_, i) => name !== list || i !== Number(index))
  switch (group) {
    case 'openings': {
      const entrances = without('entrances', openings.entrances)
      return {
        ...design,
        openings: { ...openings, entrances, vents: without('vents', openings.vents) },
      }
    }
    case 'floor':
      return { ...design, openings: { ...openings, entrances: [], vents: [] } }
    case 'cavity':
      return { ...design, cavity: seatBoards(design.cavity) }
    default:
      return design
  }
}
