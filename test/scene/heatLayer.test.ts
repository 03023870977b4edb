import { describe, expect, it } from 'vitest'
import { createHeatLayer } from '../../src/scene/heatLayer.ts'
import { createInkUniforms } from '../../src/scene/lineMaterial.ts'
import type { FieldGrid } from '../../src/solvers/conduction/fieldGrid.ts'

const gridOf = (nx: number, share: number): FieldGrid => ({
  xM: Float64Array.from({ length: nx }, (_, i) => 0.1 * i - 0.05),
  yM: Float64Array.from([0, 0.2]),
  zM: Float64Array.from([-0.1, 0, 0.3]),
  temperatureC: new Float32Array(nx * 2 * 3).fill(share),
})
const fieldOf = (layer: ReturnType<typeof createHeatLayer>) => layer.uniforms.uField.value
const createLayer = () => createHeatLayer(createInkUniforms())

describe('createHeatLayer', () => {
  it('shows heat only while it is asked for and there is a field', () => {
    const layer = createLayer()
    layer.show({ showHeat: true, heatScale: 'whole' })
    expect(layer.uniforms.uHeat.value).toBe(0)
    layer.setField(gridOf(4, 0.5))
    expect(layer.uniforms.uHeat.value).toBe(1)
    layer.show({ showHeat: false, heatScale: 'whole' })
    expect(layer.uniforms.uHeat.value).toBe(0)
    layer.show({ showHeat: true, heatScale: 'whole' })
    layer.setField(undefined)
    expect(layer.uniforms.uHeat.value).toBe(0)
  })

  it('sends a field when it is shown, not before', () => {
    const layer = createLayer()
    const empty = fieldOf(layer)
    layer.setField(gridOf(4, 0.5))
    expect(fieldOf(layer)).toBe(empty)
    layer.show({ showHeat: true, heatScale: 'whole' })
    const { width, height, depth } = fieldOf(layer).image
    expect([width, height, depth]).toEqual([4, 2, 3])
    expect(layer.uniforms.uFieldFrom.value.toArray()).toEqual([-50, 0, -100])
    const to = layer.uniforms.uFieldTo.value
    expect([to.x, to.y, to.z].map(Math.round)).toEqual([250, 200, 300])
  })

  it('writes over the texture where the size is the same and frees it where it is not', () => {
    const layer = createLayer()
    layer.show({ showHeat: true, heatScale: 'whole' })
    layer.setField(gridOf(4, 0.5))
    const first = fieldOf(layer)
    let freed = 0
    first.addEventListener('dispose', () => {
      freed++
    })
    const before = first.version
    layer.setField(gridOf(4, 0.7))
    expect(fieldOf(layer)).toBe(first)
    expect(first.image.data?.[0]).toBeCloseTo(0.7, 6)
    expect(first.version).toBeGreaterThan(before)
    layer.setField(gridOf(5, 0.7))
    expect(fieldOf(layer)).not.toBe(first)
    expect(freed).toBe(1)
  })

  it('frees its textures', () => {
    const layer = createLayer()
    const freed: string[] = []
    for (const name of ['uField', 'uPlanes', 'uScale'] as const) {
      layer.uniforms[name].value.addEventListener('dispose', () => freed.push(name))
    }
    layer.dispose()
    expect(freed).toEqual(['uField', 'uPlanes', 'uScale'])
  })

  it('tells the shader the lines and the last share of the scale that is shown', () => {
    const layer = createLayer()
    const rangeOf = (endShare: number, ...shares: readonly number[]) => ({
      ...{ endC: 100 * endShare, endShare },
      levels: shares.map((share) => ({ celsius: 100 * share, share })),
    })
    const { uLevels, uScaleEnd } = layer.uniforms
    layer.setRanges({ whole: rangeOf(1, 0.2, 0.35, 0.5), outside: rangeOf(0.0625, 0.03, 0.05) })
    const [first, step, count] = uLevels.value.toArray()
    expect([first, count, uScaleEnd.value]).toEqual([0.2, 3, 1])
    expect(step).toBeCloseTo(0.15, 12)
    layer.show({ showHeat: true, heatScale: 'outside' })
    expect([uLevels.value.x, uLevels.value.z, uScaleEnd.value]).toEqual([0.03, 2, 0.0625])
    layer.setRanges({ whole: rangeOf(1), outside: rangeOf(0.125) })
    expect([uLevels.value.z, uScaleEnd.value]).toEqual([0, 0.125])
    layer.show({ showHeat: true, heatScale: undefined })
    expect(uScaleEnd.value).toBe(1)
  })
})
