import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { materialById } from '../../../../src/catalog/materials.ts'
import { EXAMPLES } from '../../../../src/design/examples.ts'
import type { Design } from '../../../../src/design/schema.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import { computeShop } from '../../../../src/reports/shop/computeShop.ts'
import { computeSetUps } from '../../../../src/reports/shop/setups/computeSetUps.ts'
import type { Setting, SetUp } from '../../../../src/reports/shop/setups/setUpReport.ts'
import type { CutListRow } from '../../../../src/reports/shop/shopReport.ts'
import { arbitraryDesign } from '../../../design/arbitraryDesign.ts'
import { benchOf, cutRow, jobsWith } from './cutRows.ts'

const sizeOf = (setting: Setting): number => (setting.kind === 'angle' ? setting.deg : setting.mm)

const brief = ({ setUps }: { readonly setUps: readonly SetUp[] }) =>
  setUps.map(({ kind, setting, rows }) => [
    kind,
    sizeOf(setting),
    rows.map(({ label, count }) => `${label}${count}`).join(' '),
  ])

const plywood = (label: string, lengthMm: number, widthMm: number) =>
  cutRow(label, { material: 'plywood-softwood', lengthMm, widthMm, thicknessMm: 12 })

describe('computeSetUps', () => {
  it('rips, brings to thickness and cuts to length, unless the board is so already', () => {
    const a = cutRow('A', { count: 2 })
    const b = cutRow('B', { lengthMm: 500, widthMm: 70 })
    const jobs = jobsWith([
      { row: a, board: [30, 70] },
      { row: b, board: [28, 70] },
    ])
    expect(brief(computeSetUps(benchOf(), [a, b], jobs))).toEqual([
      ['rip', 60, 'A2'],
      ['plane', 28, 'A2'],
      ['crosscut', 800, 'A2'],
      ['crosscut', 500, 'B1'],
    ])
  })

  it('saws a board apart that is much too thick, or that gives several strips', () => {
    const a = cutRow('A', { thicknessMm: 40 })
    const b = cutRow('B', { thicknessMm: 10 })
    const jobs = jobsWith([
      { row: a, board: [50, 60] },
      { row: b, board: [25, 60], layers: 2 },
    ])
    const { setUps } = computeSetUps(benchOf(), [a, b], jobs)
    expect(setUps.map(({ kind }) => kind)).toEqual(['resaw', 'resaw', 'crosscut'])
  })

  it('sets one fence and one stop for all that is as wide or as long, the largest first', () => {
    const a = cutRow('A', { lengthMm: 500 })
    const b = cutRow('B', { lengthMm: 900, material: 'larch' })
    const c = cutRow('C', { lengthMm: 500, widthMm: 80.04 })
    const d = cutRow('D', { lengthMm: 500, widthMm: 80 })
    const report = computeSetUps(benchOf(), [a, b, c, d], jobsWith([]))
    expect(brief(report)).toEqual([
      ['rip', 80.04, 'C1 D1'],
      ['rip', 60, 'B1 A1'],
      ['crosscut', 900, 'B1'],
      ['crosscut', 500, 'C1 D1 A1'],
    ])
    expect(report.setUps[1]?.stock).toBe(`${b.materialName} 28 mm; ${a.materialName} 28 mm`)
    expect(report.partCount).toBe(4)
  })

  it('counts all hives that are built at once, without what is made', () => {
    const a = cutRow('A', { count: 2, partIds: ['a1', 'a2'] })
    const b = cutRow('B', { lengthMm: 500 })
    const made = [{ partId: 'a1', lengthMm: 800, widthMm: 60, thicknessMm: 28 }]
    const two = computeSetUps(benchOf({}, made), [a, b], jobsWith([], 2))
    expect(two.setUps[0]?.rows.map(({ count }) => count)).toEqual([3, 2])
    expect(two.partCount).toBe(5)
    const all = [...made, { partId: 'a2', lengthMm: 800, widthMm: 60, thicknessMm: 28 }]
    const one = computeSetUps(benchOf({}, all), [a, b], jobsWith([]))
    expect(one.setUps.flatMap(({ rows }) => rows.map(({ label }) => label))).not.toContain('A')
  })

  it('cuts a sheet at the fence as far as it reaches, and along the guide beyond', () => {
    const report = computeSetUps(
      benchOf({ ripLimitMm: 600, guideOffsetMm: 110 }),
      [plywood('A', 900, 450)],
      jobsWith([]),
    )
    expect(report.setUps.map(({ kind, tool }) => [kind, tool])).toEqual([
      ['break-down', 'Circular saw, along a guide'],
      ['rip', 'Table saw, rip fence'],
    ])
    // 900 mm to the line and 110 mm on to the guide.
    expect(report.setUps[0]?.further).toEqual([
      {
        name: 'Guide on the waste side, from the same edge',
        setting: { kind: 'length', mm: 1010 },
      },
    ])
    expect(report.setUps[0]?.advice.some((text) => text.includes('waste side'))).toBe(true)
    expect(report.tools).toEqual(['Circular saw', 'Table saw'])
  })

  it('lists a square once, cuts foam with a knife and metal with snips, and no loose filling', () => {
    const soft = (label: string, material: string) =>
      cutRow(label, { material, lengthMm: 300, widthMm: 300, grain: 'none' })
    const { setUps, partCount } = computeSetUps(
      benchOf(),
      [soft('A', 'xps'), soft('B', 'aluminium-sheet'), soft('C', 'wood-shavings')],
      jobsWith([]),
    )
    expect(materialById('wood-shavings').form).toBe('loose')
    expect(setUps.map(({ kind, tool }) => [kind, tool])).toEqual([
      ['knife', 'Knife and straightedge'],
      ['snips', 'Tin snips'],
    ])
    expect(partCount).toBe(2)
  })

  it('leaves out what is bought', () => {
    expect(computeSetUps(benchOf(), [cutRow('A', { bought: true })], jobsWith([]))).toEqual({
      setUps: [],
      partCount: 0,
      tools: [],
      nearTwins: [],
    })
  })

  it('sets each angle, taper, groove, notch, slot and drill once, after the sawing', () => {
    const bar = cutRow('A', {
      widthMm: 28,
      thicknessMm: 20,
      operations: [
        { kind: 'holes', diameter: 8, count: 2 },
        { kind: 'groove', width: 3, depth: 4 },
        { kind: 'bevel', angleDeg: 4 },
        { kind: 'notch', width: 17, depth: 9, count: 2 },
      ],
    })
    const wall = cutRow('B', {
      material: 'plywood-softwood',
      thicknessMm: 12,
      operations: [
        { kind: 'slot', width: 180, height: 8 },
        { kind: 'slot', width: 180, height: 8 },
        { kind: 'holes', diameter: 8, count: 4 },
      ],
    })
    const firring = cutRow('C', { operations: [{ kind: 'taper', from: 11, to: 60 }] })
    const { setUps } = computeSetUps(benchOf(), [bar, wall, firring], jobsWith([]))
    const shaped = setUps.filter(({ kind }) => kind !== 'rip' && kind !== 'crosscut')
    expect(brief({ setUps: shaped })).toEqual([
      ['bevel', 4, 'A1'],
      ['taper', 60, 'C1'],
      ['groove', 3, 'A1'],
      ['notch', 17, 'A1'],
      ['slot', 180, 'B1'],
      ['drill', 8, 'B1 A1'],
    ])
    // The groove lies in the middle of the 28 mm: (28 - 3) / 2 from the edge.
    expect(shaped[2]?.further.map(({ setting }) => sizeOf(setting))).toEqual([4, 12.5])
  })
})

describe('the cards', () => {
  const rowOf = (changes: Partial<CutListRow>) => cutRow('A', changes)
  const cards = (changes: Partial<CutListRow>, shop: Partial<Design['shop']> = {}) =>
    computeSetUps(benchOf(shop), [rowOf(changes)], jobsWith([])).setUps

  it('begin with a test piece', () => {
    for (const { advice } of cards({ operations: [{ kind: 'bevel', angleDeg: 4 }] })) {
      expect(advice[0]).toMatch(/^Cut a test piece first/)
    }
  })

  it('want a stop block for several pieces, none for one or for a very long one', () => {
    const stop = (changes: Partial<CutListRow>) =>
      cards(changes).map(({ kind, usesStopBlock }) => [kind, usesStopBlock])
    expect(stop({ count: 4 })).toEqual([
      ['rip', false],
      ['crosscut', true],
    ])
    expect(stop({ count: 1 })[1]).toEqual(['crosscut', false])
    expect(stop({ count: 4, lengthMm: 1201 })[1]).toEqual(['crosscut', false])
  })

  it('forbid to rip short pieces, and to use fence and mitre gauge together', () => {
    const [rip, crosscut] = cards({ lengthMm: 299 })
    expect(rip?.advice.join(' ')).toContain('shorter than 300 mm')
    expect(cards({ lengthMm: 300 })[0]?.advice.join(' ')).not.toContain('shorter than')
    for (const card of [rip, crosscut])
      expect(card?.advice.join(' ')).toContain('Never use the rip')
  })

  it('keep pairs together and what must fit for the last', () => {
    const left = cutRow('A', { hand: 'left' })
    const right = cutRow('B', { hand: 'right', groups: ['covers'] })
    const [rip] = computeSetUps(benchOf(), [left, right], jobsWith([])).setUps
    expect(rip?.advice.join(' ')).toContain('left and right hands one after the other: A, B')
    expect(rip?.advice.join(' ')).toMatch(/Last, .*: B\.$/)
  })

  it('tell that factory edges are not square', () => {
    const [rip] = computeSetUps(benchOf(), [plywood('A', 500, 400)], jobsWith([])).setUps
    expect(rip?.advice.join(' ')).toContain('Factory edges')
  })
})

describe('tool profiles', () => {
  const problems = (
    row: CutListRow,
    board: readonly [number, number] | undefined,
    tools: Design['shop']['tools'],
  ) =>
    computeSetUps(
      benchOf({ tools }),
      [row],
      jobsWith(board === undefined ? [] : [{ row, board }]),
    ).setUps.flatMap(({ kind, problem }) => (problem === undefined ? [] : [kind]))

  it.each([
    ['table-saw', 39, []],
    ['circular-saw', 39, ['rip']],
    ['circular-saw', 40, []],
    ['hand-tools', 40, ['rip']],
  ] as const)('%s ripping to %d mm', (tools, widthMm, kinds) => {
    expect(problems(cutRow('A', { widthMm }), [28, 95], tools)).toEqual(kinds)
  })

  it.each([
    // 28 mm from 50: sawn apart; from 31: 3 mm planed; from 30: what a hand plane takes off.
    ['table-saw', 50, []],
    ['circular-saw', 50, ['resaw']],
    ['circular-saw', 31, ['plane']],
    ['circular-saw', 30, []],
    ['hand-tools', 50, ['resaw']],
  ] as const)('%s making 28 mm out of %d', (tools, thickness, kinds) => {
    expect(problems(cutRow('A'), [thickness, 60], tools)).toEqual(kinds)
  })

  it('saws no board on edge that is higher than two passes of the blade', () => {
    const wide = cutRow('A', { widthMm: 151 })
    expect(problems(wide, [50, 151], 'table-saw')).toEqual(['resaw'])
    expect(problems({ ...wide, widthMm: 150 }, [50, 150], 'table-saw')).toEqual([])
  })

  it('only crosscuts by hand when the section is sold, sheets being cut by the shop', () => {
    const report = computeSetUps(
      benchOf({ tools: 'hand-tools' }),
      [cutRow('A'), plywood('B', 500, 400)],
      jobsWith([{ row: cutRow('A'), board: [28, 60] }]),
    )
    expect(report.tools).toEqual(['Panel saw at the shop', 'Handsaw'])
    expect(report.setUps.filter(({ problem }) => problem !== undefined)).toEqual([])
  })

  it('says what to buy, frames ready made first', () => {
    const bar = cutRow('A', { widthMm: 27, thicknessMm: 19, groups: ['frames'] })
    const [rip] = computeSetUps(benchOf({ tools: 'hand-tools' }), [bar], jobsWith([])).setUps
    expect(rip?.problem?.wayOut).toMatch(/^Buy the frames ready made\..* 19 × 27 mm/)
  })
})

const setUpsOf = (design: Design) => {
  const result = deriveHive(design)
  if (result.kind === 'refused') return undefined
  return computeShop(design, result.hive)
}

/** The properties that every hive's set-ups have. */
const expectSound = (design: Design): void => {
  const shop = setUpsOf(design)
  if (shop === undefined) return
  const { setUps, partCount } = shop.setUps
  const made = new Set(design.made.map(({ partId }) => partId))
  const left = shop.cutList.map((row) => ({
    row,
    parts: row.count * shop.cutting.hives - row.partIds.filter((id) => made.has(id)).length,
  }))
  const cut = left.filter(
    ({ row, parts }) =>
      !row.bought && parts > 0 && !['loose'].includes(materialById(row.material).form),
  )
  // Counts add up: each row has all its parts in every set-up that it is in.
  const partsByLabel = new Map(cut.map(({ row, parts }) => [row.label, parts]))
  for (const { rows } of setUps) {
    for (const { label, count } of rows)
      expect([label, count]).toEqual([label, partsByLabel.get(label)])
    expect(new Set(rows.map(({ label }) => label)).size).toBe(rows.length)
  }
  expect(partCount).toBe(cut.reduce((sum, { parts }) => sum + parts, 0))
  // Every row that is cut is in a set-up, once for each kind of operation that it has.
  const kindOf = {
    holes: 'drill',
    slot: 'slot',
    notch: 'notch',
    bevel: 'bevel',
    taper: 'taper',
    groove: 'groove',
  } as const
  for (const { row } of cut) {
    const kinds = new Set(
      setUps
        .filter(({ rows }) => rows.some(({ label }) => label === row.label))
        .map(({ kind }) => kind),
    )
    expect(kinds.size).toBeGreaterThan(0)
    for (const operation of row.operations) expect(kinds).toContain(kindOf[operation.kind])
  }
  // No setting twice, numbers in order.
  const keys = setUps.map(({ kind, tool, setting, further }) =>
    JSON.stringify([
      kind,
      tool,
      Math.round(sizeOf(setting) * 10),
      further.map((f) => [f.name, Math.round(sizeOf(f.setting) * 10)]),
    ]),
  )
  expect(new Set(keys).size).toBe(keys.length)
  expect(setUps.map(({ number }) => number)).toEqual(setUps.map((_, i) => i + 1))
}

describe('the set-ups of hives', () => {
  it.each(EXAMPLES)('of $name are sound', ({ design }) => {
    expectSound(design)
    expect(setUpsOf(design)?.setUps.setUps.filter(({ problem }) => problem !== undefined)).toEqual(
      [],
    )
  })

  it('are sound for any hive that can be built', () => {
    fc.assert(fc.property(arbitraryDesign(), expectSound), { numRuns: 25 })
  })
})
