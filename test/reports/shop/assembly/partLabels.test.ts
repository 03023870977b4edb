import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { EXAMPLES } from '../../../../src/design/examples.ts'
import type { Box } from '../../../../src/geometry/box.ts'
import { indexParts } from '../../../../src/reports/shop/assembly/lookedParts.ts'
import { partLabels } from '../../../../src/reports/shop/assembly/partLabels.ts'
import { cutList } from '../../../../src/reports/shop/cutList.ts'
import { arbitraryBuilt, runs } from '../../../hive/arbitraryBuilt.ts'
import { at, piece } from '../pieces.ts'
import { type Assembled, assemble, assembleHive } from './assemble.ts'

const labelNamed = ({ report }: Assembled, name: string) => {
  const found = report.labels.find((l) => l.name === name)
  if (found === undefined) throw new Error(`no label of ${name}`)
  return found
}

const faultsOf = ({ rows, report: { labels } }: Assembled): readonly string[] => {
  const faults: string[] = []
  if (labels.map((l) => l.label).join() !== rows.map((r) => r.label).join()) {
    faults.push('labels are not those of the cut list')
  }
  const byLabel = new Map(labels.map((l) => [l.label, l]))
  for (const { label, mates, outside } of labels) {
    if (outside === '') faults.push(`${label} has no face`)
    if (mates.length === 0) faults.push(`${label} has no mate`)
    for (const mate of mates) {
      if (byLabel.get(mate)?.mates.includes(label) !== true) faults.push(`${mate} forgets ${label}`)
    }
  }
  for (const row of rows) {
    if (byLabel.get(row.label)?.hand !== row.hand) faults.push(`${row.label} has the wrong hand`)
  }
  return faults
}

describe('partLabels', () => {
  it.each(EXAMPLES)(
    'labels every row of $design.title.name, and mates are mutual',
    ({ design }) => {
      expect(faultsOf(assemble(design))).toEqual([])
    },
  )

  it('does so for any hive that can be built', () => {
    fc.assert(
      fc.property(arbitraryBuilt(), ({ design, hive }) => {
        expect(faultsOf(assembleHive(design, hive))).toEqual([])
      }),
      { numRuns: runs(25) },
    )
  })

  it('says what is up as the part stands in the hive', () => {
    const built = assemble()
    expect(labelNamed(built, 'Wall stud').up).toBe('end')
    expect(labelNamed(built, 'Long wall cladding').up).toBe('long edge')
    expect(labelNamed(built, 'Cover board').up).toBe('face')
    expect(labelNamed(built, 'Floor latch').up).toBe('none')
  })

  it('turns a lining with its best face to the bees', () => {
    expect(labelNamed(assemble(), 'Long wall lining').outside).toContain('inside')
    expect(labelNamed(assemble(), 'End wall cladding').outside).toContain('out')
  })

  it('gives both hands to parts that are each other in a mirror', () => {
    // A rail with a step at one end and a cheek on one side: no turn makes it its mirror image.
    const rail = (mirrored: boolean) => {
      const cheek = mirrored ? 50 : 0
      return [at(0, 0, 0, 300, 20, 60), at(0, 20, 0, 100, 10, 60), at(0, 20, cheek, 300, 10, 10)]
    }
    const parts = [
      piece(rail(false), { id: 'back', fixedTo: ['front'] }),
      piece(rail(true).map(moved), { id: 'front' }),
    ]
    const rows = cutList(parts)
    const labels = partLabels(indexParts(parts, rows), rows, [])
    expect(labels.map((l) => l.hand).sort()).toEqual(['left', 'right'])
    expect(labels.map((l) => l.mates)).toEqual([['B'], ['A']])
  })
})

const moved = (b: Box): Box => ({ ...b, z0: b.z0 + 500, z1: b.z1 + 500 })
