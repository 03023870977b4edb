import type { BufferGeometry, Mesh } from 'three'
import { describe, expect, it } from 'vitest'
import { EXAMPLES } from '../../src/design/examples.ts'
import { deriveHive } from '../../src/hive/deriveHive.ts'
import { createHiveModel, type ModelView } from '../../src/scene/hiveModel.ts'

const VIEW: ModelView = {
  explode: 0,
  lidOpen: 0,
  floorOpen: 0,
  liftedFrame: 0,
  frameLift: 0,
  camera: { preset: 'three-quarter', serial: 0 },
  sectionAxis: 'none',
  sectionAt: 0.5,
  selectedPartIds: [],
  hoveredPartId: undefined,
  showDimensions: false,
  quality: 'full',
  showHeat: false,
  heatScale: 'whole',
  assembly: undefined,
}

const built = () => {
  const [example] = EXAMPLES
  const result = example && deriveHive(example.design)
  if (result?.kind !== 'built') throw new Error('the first example is built')
  return result.hive
}

describe('createHiveModel over the steps of assembly', () => {
  it('keeps its meshes and their geometries', () => {
    const hive = built()
    const model = createHiveModel()
    const geometries = (): readonly BufferGeometry[] => {
      const found: BufferGeometry[] = []
      model.root.traverse((o) => {
        if ('geometry' in o) found.push((o as Mesh).geometry)
      })
      return found
    }
    model.show(hive, VIEW)
    const before = geometries()
    const last = Math.max(...hive.parts.map((p) => p.step))
    for (let step = 1; step <= last; step++) {
      const solid = hive.parts.filter((p) => p.step < step).map((p) => p.id)
      const fresh = hive.parts.filter((p) => p.step === step).map((p) => p.id)
      model.show(hive, { ...VIEW, assembly: { solid, fresh } })
      const after = geometries()
      expect(after).toHaveLength(before.length)
      expect(after.every((geometry, i) => geometry === before[i])).toBe(true)
    }
    model.dispose()
  })

  it('fits what is there, and shows the whole hive again when the steps are left', () => {
    const hive = built()
    const model = createHiveModel()
    model.show(hive, VIEW)
    const whole = model.bounds()
    model.show(hive, { ...VIEW, assembly: { solid: [], fresh: ['frame-1/upper-top-bar'] } })
    expect(model.corners()).toHaveLength(8)
    model.show(hive, { ...VIEW, assembly: { solid: [], fresh: [] } })
    expect(model.corners()).toHaveLength(0)
    model.show(hive, VIEW)
    expect(model.bounds()).toEqual(whole)
    model.dispose()
  })

  it('draws no dimensions of a hive that is half built', () => {
    const hive = built()
    const model = createHiveModel()
    const view = { ...VIEW, showDimensions: true }
    model.show(hive, view)
    expect(model.dimensions().length).toBeGreaterThan(0)
    model.show(hive, { ...view, assembly: { solid: [], fresh: ['front-wall/lining'] } })
    expect(model.dimensions()).toEqual([])
    model.dispose()
  })
})
