import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import { markMade } from '../../../../src/design/madeEdits.ts'
import type { Design, MadeSizeDesign } from '../../../../src/design/schema.ts'
import { applyChanges } from '../../../../src/design/setField.ts'
import { deriveHive } from '../../../../src/hive/deriveHive.ts'
import type { Part } from '../../../../src/hive/part.ts'
import { cutList } from '../../../../src/reports/shop/cutList.ts'
import { answerMistake } from '../../../../src/reports/shop/made/answerMistake.ts'
import { followMeasuredPart } from '../../../../src/reports/shop/made/followMeasuredPart.ts'
import { arbitraryDesign } from '../../../design/arbitraryDesign.ts'

const partsOf = (design: Design): readonly Part[] => {
  const result = deriveHive(design)
  return result.kind === 'built' ? result.hive.parts : []
}

const rowWith = (design: Design, id: string) => {
  const row = cutList(partsOf(design)).find(({ partIds }) => partIds.includes(id))
  if (row === undefined) throw new Error(`There is no part ${id}.`)
  return row
}

const labelOf = (id: string): string => rowWith(DEFAULT_DESIGN, id).label

const asMade = (design: Design, id: string): MadeSizeDesign => {
  const { lengthMm, widthMm, thicknessMm } = rowWith(design, id)
  return { partId: id, lengthMm, widthMm, thicknessMm }
}

const LONG_LINING = 'front-wall/lining'

describe('followMeasuredPart', () => {
  it('lets the play take up a long wall that came out short', () => {
    // The wall is as long as the row, and the row has 15 mm of play.
    const options = followMeasuredPart(DEFAULT_DESIGN, labelOf(LONG_LINING), 'length', 901)
    const play = options.find(({ changes }) => changes[0]?.field === 'cavity.playMm')
    expect(play?.changes).toEqual([{ field: 'cavity.playMm', value: 9 }])
    expect(play?.text).toBe('Let the play in the row take it up')
    expect(play?.newlyFailed).toEqual([])
    const after = applyChanges(DEFAULT_DESIGN, play?.changes ?? [])
    expect(rowWith(after, LONG_LINING).lengthMm).toBe(901)
  })

  it('puts what fails a check behind what does not', () => {
    // 12 mm of play would leave 3, which is too little to lift the first comb.
    const options = followMeasuredPart(DEFAULT_DESIGN, labelOf(LONG_LINING), 'length', 895)
    const failing = options.map(({ newlyFailed }) => newlyFailed.length)
    expect(failing).toEqual(failing.toSorted((a, b) => a - b))
    expect(options.at(-1)?.newlyFailed).toContain('Play in the row')
  })

  it('moves nothing but a leg when a leg is short', () => {
    const [first] = followMeasuredPart(DEFAULT_DESIGN, ['stand/leg-left-back'], 'length', 300)
    expect(first?.changes).toEqual([{ field: 'stand.workingHeightMm', value: 840 }])
    expect(first?.moved.map(({ name, side, afterMm }) => [name, side, afterMm])).toEqual([
      ['Leg', 'length', 300],
    ])
  })

  it('leaves published frame sizes alone unless a frame is off', () => {
    const fields = (id: string, mm: number) =>
      followMeasuredPart(DEFAULT_DESIGN, labelOf(id), 'length', mm).flatMap(({ changes }) =>
        changes.map(({ field }) => field),
      )
    const walls = fields('left-wall/lining', 462)
    expect(walls).toContain('cavity.endBarSpaceMm')
    expect(walls.filter((field) => field.startsWith('frame.'))).toEqual([])
    expect(fields('frame-1/upper-top-bar', 481)).toEqual(['frame.topBarLengthMm'])
  })

  it('never moves a made part', () => {
    const made = markMade(DEFAULT_DESIGN, [asMade(DEFAULT_DESIGN, 'back-wall/lining')])
    // Both long linings are as long as the row: the second can't follow the first any more.
    expect(followMeasuredPart(made, [LONG_LINING], 'length', 901)).toEqual([])
  })

  it('finds nothing for a part that is as planned, bought, or not there', () => {
    expect(followMeasuredPart(DEFAULT_DESIGN, labelOf(LONG_LINING), 'length', 907.04)).toEqual([])
    expect(followMeasuredPart(DEFAULT_DESIGN, 'ZZ', 'length', 900)).toEqual([])
    expect(followMeasuredPart(DEFAULT_DESIGN, ['hardware/lid-hinge-1'], 'length', 70)).toEqual([])
  })
})

/** A row of the hive, a side, how far it is off, and a few other parts that are made. */
const mistakes = fc.record({
  design: arbitraryDesign(),
  row: fc.nat(),
  side: fc.constantFrom('length' as const, 'width' as const),
  off: fc.integer({ min: -30, max: 30 }).map((tenths) => tenths / 4 || 1),
  made: fc.array(fc.nat(), { maxLength: 2 }),
})

type Mistake = typeof mistakes extends fc.Arbitrary<infer M> ? M : never

/** The design with its made parts, the part that is off, and the ids of those made. */
const layOut = ({ design, row, made }: Mistake) => {
  const plain = { ...design, made: [] }
  const parts = partsOf(plain).filter(({ bought }) => !bought)
  const target = parts[row % (parts.length || 1)]
  if (target === undefined) return undefined
  const ids = made.flatMap((i) => parts[i % parts.length]?.id ?? [])
  const others = ids.filter((id) => id !== target.id)
  const bench = markMade(
    plain,
    others.map((id) => asMade(plain, id)),
  )
  return { bench, target, others }
}

const sizesOf = (design: Design) =>
  new Map(partsOf(design).map(({ id, size }) => [id, [size.length, size.width, size.thickness]]))

/** Without grain the longer side is called the length, whichever was cut. */
const isOfSize = (part: Part, side: 'length' | 'width', mm: number, sizes: readonly number[]) => {
  const found = part.grain === 'none' ? sizes.slice(0, 2) : [sizes[side === 'length' ? 0 : 1]]
  return found.some((each) => each !== undefined && Math.abs(each - mm) <= 0.05 + 1e-9)
}

describe('every remedy', () => {
  it('gives the row the measured size, builds a hive, and leaves made parts as they are', () => {
    fc.assert(
      fc.property(mistakes, (mistake) => {
        const laid = layOut(mistake)
        if (laid === undefined) return
        const { bench, target, others } = laid
        const measured = target.size[mistake.side] + mistake.off
        if (measured < 3) return
        const before = sizesOf(bench)
        const remedies = followMeasuredPart(bench, [target.id], mistake.side, measured)
        for (const { changes, moved } of remedies) {
          const after = sizesOf(applyChanges(bench, changes))
          expect(isOfSize(target, mistake.side, measured, after.get(target.id) ?? [])).toBe(true)
          expect(moved.length).toBeGreaterThan(0)
          for (const id of others) {
            const off = (after.get(id) ?? []).map((mm, i) => mm - (before.get(id)?.[i] ?? 0))
            expect(off).toHaveLength(3)
            expect(Math.max(...off.map(Math.abs))).toBeLessThanOrEqual(0.05 + 1e-9)
          }
        }
      }),
      { numRuns: 8 },
    )
  }, 60_000)
})

describe('answerMistake', () => {
  const answer = (id: string, side: 'length' | 'width' | 'thickness', mm: number) =>
    answerMistake(DEFAULT_DESIGN, labelOf(id), side, mm)

  it('tells what a piece that is too short can still become, the largest first', () => {
    const { canBecome, offByMm, trim } = answer(LONG_LINING, 'length', 901)
    expect(offByMm).toBe(-6)
    expect(trim).toBeUndefined()
    // Of 12 mm plywood there are the end linings and the cover boards besides; the other long
    // lining is 907 long and can't be had from it.
    expect(canBecome.map(({ name }) => name)).toEqual(['End wall lining', 'Cover board'])
  })

  it('leaves out what is made', () => {
    const ends = ['left-wall/lining', 'right-wall/lining'].map((id) => asMade(DEFAULT_DESIGN, id))
    const { canBecome } = answerMistake(
      markMade(DEFAULT_DESIGN, ends),
      labelOf(LONG_LINING),
      'length',
      901,
    )
    expect(canBecome.map(({ name }) => name)).toEqual(['Cover board'])
  })

  it('trims what is too large', () => {
    const { canBecome, trim, offByMm } = answer(LONG_LINING, 'length', 910)
    expect([offByMm, canBecome]).toEqual([3, []])
    expect(trim).toMatch(/^Cut it again to its length/)
    expect(answer(LONG_LINING, 'thickness', 12.5).trim).toBeUndefined()
    expect(answer('stand/leg-left-back', 'thickness', 62).trim).toMatch(/^Plane it/)
  })

  it.each([
    ['front-wall/stud-1', 'length', 408, true],
    ['front-wall/insulation-1', 'length', 405, true],
    ['left-wall/rail-low', 'length', 460, true],
    // The long walls run through: their rails carry the corners.
    ['front-wall/rail-low', 'length', 900, false],
    ['front-wall/stud-1', 'length', 380, false],
    ['front-wall/lining', 'length', 901, false],
    ['covers/board-1', 'length', 512, false],
    ['front-wall/cladding-2', 'length', 900, false],
  ] as const)('of %s, %s %d mm: a shim is %s', (id, side, mm, isOffered) => {
    expect(answer(id, side, mm).shim !== undefined).toBe(isOffered)
  })

  it('takes the ids of a part in place of its label', () => {
    expect(answerMistake(DEFAULT_DESIGN, ['back-wall/lining'], 'length', 901).offByMm).toBe(-6)
  })

  it('has no answer for what is as planned or not there', () => {
    const nothing = { absorb: [], shim: undefined, canBecome: [], trim: undefined }
    expect(answer(LONG_LINING, 'length', 907)).toMatchObject({ ...nothing, offByMm: 0 })
    expect(answerMistake(DEFAULT_DESIGN, 'ZZ', 'length', 900)).toMatchObject(nothing)
  })
})
