import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { CAUTIONS } from '../../../../src/catalog/cautions.ts'
import { DEFAULT_DESIGN } from '../../../../src/design/defaults.ts'
import { EXAMPLES } from '../../../../src/design/examples.ts'
import { STEP } from '../../../../src/hive/steps.ts'
import type { AssemblyStep } from '../../../../src/reports/shop/assembly/assemblyReport.ts'
import { arbitraryMixedBuilt, runs } from '../../../hive/arbitraryBuilt.ts'
import { type Assembled, assemble, assembleHive, OIL } from './assemble.ts'

interface Place {
  readonly step: number
  /** In the whole order of building, counted from 0. */
  readonly at: number
}

/** When each part comes on. */
const placesOf = ({ report }: Assembled): ReadonlyMap<string, Place> => {
  const places = new Map<string, Place>()
  for (const { number, partIds } of report.steps) {
    for (const id of partIds) places.set(id, { step: number, at: places.size })
  }
  return places
}

const partsMiscounted = ({ hive, report }: Assembled): readonly string[] => {
  const built = report.steps.flatMap((step) => step.partIds)
  const is = new Set(built)
  return [
    ...hive.parts.filter(({ id }) => !is.has(id)).map(({ id }) => `${id} never comes on`),
    ...built.filter((id, i) => built.indexOf(id) !== i).map((id) => `${id} comes on twice`),
  ]
}

/** The linings of the walls lie on the bench; they join each other when the box is glued. */
const partsInTheAir = (built: Assembled): readonly string[] => {
  const places = placesOf(built)
  const stepOf = (id: string): number => places.get(id)?.step ?? Number.POSITIVE_INFINITY
  return built.hive.parts
    .filter(({ id }) => !id.endsWith('-wall/lining'))
    .filter(({ id, fixedTo }) => !fixedTo.some((other) => stepOf(other) <= stepOf(id)))
    .map(({ id }) => `${id} comes before what carries it`)
}

/** What closes the pocket that a piece of insulation lies in. */
const skinsOver = ({ hive }: Assembled, filling: string): readonly string[] => {
  const panel = filling.slice(0, filling.indexOf('/'))
  if (panel === 'roof') return ['roof/deck']
  if (panel.startsWith('follower-')) return [`${panel}/skin-right`]
  return hive.parts.map((p) => p.id).filter((id) => id.startsWith(`${panel}/cladding`))
}

const pocketsClosedEmpty = (built: Assembled): readonly string[] => {
  const places = placesOf(built)
  const isBefore = (a: string, b: string) => (places.get(a)?.at ?? -1) < (places.get(b)?.at ?? -1)
  return built.hive.parts
    .filter(({ id }) => id.includes('/insulation'))
    .flatMap(({ id }) => {
      const skins = skinsOver(built, id)
      if (skins.length === 0) return [`${id} is never closed in`]
      return skins
        .filter((skin) => !isBefore(id, skin))
        .map((skin) => `${skin} closes the pocket of ${id}`)
    })
}

const rowsMiscounted = ({ rows, report }: Assembled): readonly string[] => {
  const counts = new Map<string, number>()
  for (const { label, count } of report.steps.flatMap((s) => s.rows)) {
    counts.set(label, (counts.get(label) ?? 0) + count)
  }
  return [
    ...rows.filter((row) => counts.get(row.label) !== row.count).map((row) => `row ${row.label}`),
    ...report.steps
      .filter((s) => s.rows.reduce((sum, row) => sum + row.count, 0) !== s.partIds.length)
      .map((s) => `step ${s.number} miscounts`),
  ]
}

const faultsOf = (built: Assembled): readonly string[] => [
  ...partsMiscounted(built),
  ...partsInTheAir(built),
  ...pocketsClosedEmpty(built),
  ...rowsMiscounted(built),
  ...built.report.steps
    .filter((s) => s.instructions.length === 0 || s.minutes[0] > s.minutes[1])
    .map((s) => `step ${s.number} says nothing or runs backwards`),
]

const stepAt = ({ report }: Assembled, stage: number): AssemblyStep => {
  const step = report.steps.find((s) => s.stage === stage)
  if (step === undefined) throw new Error(`no step of stage ${stage}`)
  return step
}

describe('computeAssembly', () => {
  it.each(EXAMPLES)('gives an order in which $design.title.name can be built', ({ design }) => {
    expect(faultsOf(assemble(design))).toEqual([])
  })

  it('gives such an order for any hive that can be built', () => {
    fc.assert(
      fc.property(arbitraryMixedBuilt(), ({ design, hive }) => {
        expect(faultsOf(assembleHive(design, hive))).toEqual([])
      }),
      { numRuns: runs(40) },
    )
  })

  it('numbers the steps from 1 without a gap', () => {
    const { report } = assemble({ ...DEFAULT_DESIGN, lid: { ...DEFAULT_DESIGN.lid, form: 'flat' } })
    expect(report.steps.map((s) => s.number)).toEqual(report.steps.map((_, i) => i + 1))
    expect(report.steps.some((s) => s.stage === STEP.roofFrame)).toBe(false)
  })

  it('hangs the frames last but for what covers them', () => {
    const parted = assemble().report.steps.filter((s) => s.partIds.length > 0)
    expect(parted.slice(-2).map((s) => s.stage)).toEqual([STEP.frames, STEP.covers])
  })

  it('clads the walls that run through first, whichever they are', () => {
    const walls = { ...DEFAULT_DESIGN.walls, corner: 'end-through' as const }
    const through = stepAt(assemble({ ...DEFAULT_DESIGN, walls }), STEP.claddingThrough)
    expect(through.title).toBe('Clad the end walls')
    expect(through.partIds.every((id) => /^(left|right)-wall/.test(id))).toBe(true)
  })

  it('measures the diagonals of what is glued up', () => {
    // Long walls 907 x 467.5: 822649 + 218556.25; end walls 464 wide: 215296 + 218556.25.
    const built = assemble()
    expect(stepAt(built, STEP.longWalls).diagonals[0]?.lengthMm).toBeCloseTo(
      Math.sqrt(1041205.25),
      6,
    )
    expect(stepAt(built, STEP.endWalls).diagonals[0]?.lengthMm).toBeCloseTo(Math.sqrt(433852.25), 6)
    // Inside 763 x 464: 582169 + 215296 = 797465.
    expect(stepAt(built, STEP.box).diagonals[0]?.lengthMm).toBeCloseTo(Math.sqrt(797465), 6)
    // Floor 787 x 646: 619369 + 417316; lid 950 x 651: 902500 + 423801.
    expect(stepAt(built, STEP.floorPanel).diagonals[0]?.lengthMm).toBeCloseTo(Math.sqrt(1036685), 6)
    expect(stepAt(built, STEP.lidPanel).diagonals[0]?.lengthMm).toBeCloseTo(Math.sqrt(1326301), 6)
    // Both halves of a frame over their side bars: 200704 + 213² and 200704 + 222.5².
    const halves = stepAt(built, STEP.frames).diagonals.map((d) => d.lengthMm)
    expect(halves[0]).toBeCloseTo(Math.sqrt(246073), 6)
    expect(halves[1]).toBeCloseTo(Math.sqrt(250210.25), 6)
  })

  it('asks for helpers by the mass that is lifted, and not where a person can do it alone', () => {
    const strong = { ...DEFAULT_DESIGN.keeper, comfortableLiftKg: 40 }
    const weak = { ...DEFAULT_DESIGN.keeper, comfortableLiftKg: 8 }
    const heavy = 'heavier than you lift in comfort'
    const [forStrong, forWeak] = [strong, weak].map((keeper) =>
      assemble({ ...DEFAULT_DESIGN, keeper }),
    )
    if (forStrong === undefined || forWeak === undefined) throw new Error('two designs')
    expect(stepAt(forWeak, STEP.lidHung).secondPerson).toContain(heavy)
    expect(stepAt(forStrong, STEP.lidHung).secondPerson).not.toContain(heavy)
    expect(stepAt(forWeak, STEP.lidHung).secondPerson).toContain('Alone: ')
    expect(stepAt(forWeak, STEP.wallInsulation).secondPerson).toBeUndefined()
  })

  it('lifts the whole lid when it is hung', () => {
    const built = assemble()
    const ids = new Set(built.hive.parts.filter((p) => p.motion === 'lid').map((p) => p.id))
    const lidKg = built.rows.reduce(
      (sum, row) => sum + row.massKgEach * row.partIds.filter((id) => ids.has(id)).length,
      0,
    )
    expect(stepAt(built, STEP.lidHung).liftKg).toBeCloseTo(lidKg, 9)
  })

  it('names cautions of the catalogue, those on foam only where there is foam', () => {
    const known = new Set(CAUTIONS.map((c) => c.id))
    const built = assemble()
    for (const id of built.report.steps.flatMap((s) => s.cautions)) expect(known).toContain(id)
    expect(stepAt(built, STEP.wallInsulation).cautions).toContain('hot-wire')
    const walls = { ...DEFAULT_DESIGN.walls, insulation: 'sheep-wool' as const }
    const wool = assemble({ ...DEFAULT_DESIGN, walls })
    expect(stepAt(wool, STEP.wallInsulation).cautions).toEqual([])
  })

  it('waits for each coat, and for the cure before bees', () => {
    const built = assemble(DEFAULT_DESIGN, { finish: OIL })
    expect(stepAt(built, STEP.finish).waitHours).toBe(72)
    expect(stepAt(built, STEP.lastCheck).waitHours).toBe(240)
    expect(stepAt(built, STEP.finish).worksOn).toContain('front-wall/cladding-1')
    expect(stepAt(built, STEP.finish).worksOn).not.toContain('front-wall/lining')
  })

  it('leaves the finish out where there is none', () => {
    const bare = assemble().report.steps
    expect(bare.some((s) => s.stage === STEP.finish)).toBe(false)
    expect(bare.at(-1)?.waitHours).toBe(0)
  })

  it('dips boards in wax before any of them is on the hive', () => {
    const { report } = assemble(DEFAULT_DESIGN, { finish: { ...OIL, id: 'wax-dip' } })
    const at = (stage: number): number => report.steps.findIndex((s) => s.stage === stage)
    expect(at(STEP.finish)).toBeGreaterThan(-1)
    expect(at(STEP.finish)).toBeLessThan(at(STEP.claddingThrough))
  })

  it('gives each fastening to the step that makes it', () => {
    const made = (step: number, glue: boolean) => ({
      joint: 'invented',
      step,
      labels: ['E', 'H'] as const,
      partIds: ['front-wall/lining'],
      fastener: { kind: 'screw', diameterMm: 4, lengthMm: 40, finish: 'steel' } as const,
      count: 100,
      layers: [],
      penetrationMm: 28,
      coverMm: 10,
      spacingMm: 150,
      edgeMm: 10,
      endMm: 30,
      pilotMm: 2.5,
      clearanceHoleMm: 4,
      glue,
      rule: '',
      source: '',
      warning: undefined,
    })
    const fastenings = [made(STEP.endWalls, true), made(STEP.longWalls, false)]
    const corner = {
      ...made(STEP.endWalls, true),
      partIds: ['left-wall/stud-1', 'front-wall/lining', 'front-wall/stud-1'],
    }
    const built = assemble(DEFAULT_DESIGN, { fastenings: [...fastenings, corner] })
    // Walls that were built apart are joined when the box is.
    expect(stepAt(built, STEP.box).fastenings).toEqual([2])
    expect(stepAt(built, STEP.longWalls).fastenings).toEqual([1])
    expect(stepAt(built, STEP.endWalls).fastenings).toEqual([0])
    // Without glue there is nothing to wait for; a hundred screws take 50 to 100 minutes.
    expect(stepAt(built, STEP.longWalls).waitHours).toBe(0)
    expect(stepAt(built, STEP.endWalls).waitHours).toBe(4)
    const more = stepAt(built, STEP.longWalls).minutes
    const less = stepAt(assemble(), STEP.longWalls).minutes
    expect([more[0] - less[0], more[1] - less[1]]).toEqual([50, 100])
  })
})
