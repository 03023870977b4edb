import { afterEach, describe, expect, it } from 'vitest'
import { DEFAULT_DESIGN } from '../../src/design/defaults.ts'
import { box } from '../../src/geometry/box.ts'
import { vec3 } from '../../src/geometry/vector.ts'
import type { HeatFieldAnswer } from '../../src/reports/heat/field/heatFieldAnswer.ts'
import { followHeat } from '../../src/scene/followHeat.ts'
import { createHeatLayer } from '../../src/scene/heatLayer.ts'
import { createInkUniforms } from '../../src/scene/lineMaterial.ts'
import type { Hit } from '../../src/scene/pickPart.ts'
import { useDesignStore } from '../../src/store/designStore.ts'
import { useHeatField } from '../../src/store/heatField.ts'
import { useViewStore } from '../../src/store/viewStore.ts'
import { samplePart } from './sampleHive.ts'

/** A field that is equally warm everywhere; nothing else of the answer is looked at. */
const answerOf = (share: number): HeatFieldAnswer => ({
  quality: 'full',
  conductanceWPerK: 1,
  lowerWPerK: 1,
  upperWPerK: 1,
  panels: [],
  shares: [],
  edges: [],
  coldest: { fRsi: 1, pointMm: [0, 0, 0], partId: undefined, place: '' },
  warmestOutsideShare: 0.04,
  slopeStepError: 0,
  leftOut: [],
  grid: {
    xM: Float64Array.from([0, 1]),
    yM: Float64Array.from([0, 1]),
    zM: Float64Array.from([0, 1]),
    temperatureC: new Float32Array(8).fill(share),
  },
  unknowns: 8,
  iterations: 1,
  hasConverged: true,
})
const hit: Hit = {
  part: samplePart('wall', box([0, 1], [0, 1], [0, 1])),
  closedPoint: vec3(500, 500, 500),
}
const follow = () => {
  const layer = createHeatLayer(createInkUniforms())
  const drawn = { frames: 0 }
  const invalidate = () => {
    drawn.frames++
  }
  return { layer, drawn, follower: followHeat(layer, { invalidate, isStill: () => true }) }
}
const probed = () => useViewStore.getState().heatProbe
const arrive = (share: number) =>
  useHeatField.setState({ answer: answerOf(share), answerDesign: useDesignStore.getState().design })

afterEach(() => {
  useHeatField.setState({ answer: undefined, answerDesign: undefined })
  useViewStore.getState().set({ showHeat: false, heatProbe: undefined })
  useDesignStore.setState({ design: DEFAULT_DESIGN })
})

describe('followHeat', () => {
  it('reads a temperature only while heat is shown and known', () => {
    const { follower } = follow()
    follower.probe(hit)
    expect(probed()).toBeUndefined()
    useViewStore.getState().set({ showHeat: true })
    expect(probed()).toBeUndefined()
    arrive(0.25)
    expect(probed()).toEqual({ share: 0.25, partId: 'wall' })
    arrive(0.75)
    expect(probed()?.share).toBe(0.75)
    follower.probe(undefined)
    expect(probed()).toBeUndefined()
    follower.probe(hit)
    useViewStore.getState().set({ showHeat: false })
    expect(probed()).toBeUndefined()
    follower.dispose()
  })

  it('fades when the design leaves the answer behind, and is fresh with the next one', () => {
    const { layer, follower } = follow()
    arrive(0.5)
    expect(layer.uniforms.uFresh.value).toBe(1)
    useDesignStore.setState({ design: { ...DEFAULT_DESIGN } })
    expect(layer.uniforms.uFresh.value).toBe(0)
    arrive(0.5)
    expect(layer.uniforms.uFresh.value).toBe(1)
    follower.dispose()
  })

  it('draws nothing for an answer that nobody looks at', () => {
    const { drawn, follower } = follow()
    arrive(0.5)
    expect(drawn.frames).toBe(0)
    expect(follower.advance()).toBe(false)
    useViewStore.getState().set({ showHeat: true })
    arrive(0.6)
    expect(drawn.frames).toBe(1)
    follower.dispose()
  })

  it('draws lines that are round in the unit shown', () => {
    const { layer, follower } = follow()
    arrive(0.5)
    const inCelsius = layer.uniforms.uLevels.value.clone()
    const { units, set } = useViewStore.getState()
    set({ units: { ...units, temperature: 'f' } })
    expect(layer.uniforms.uLevels.value.equals(inCelsius)).toBe(false)
    set({ units })
    expect(layer.uniforms.uLevels.value.equals(inCelsius)).toBe(true)
    follower.dispose()
  })

  it('ends the colours of the outer skin where the answer says it is warmest', () => {
    const { layer, follower } = follow()
    const { site, colony } = DEFAULT_DESIGN
    useDesignStore.setState({
      design: {
        ...DEFAULT_DESIGN,
        site: { ...site, coldNightC: -10 },
        colony: { ...colony, cavityAirC: 20 },
      },
    })
    arrive(0.5)
    layer.show({ showHeat: true, heatScale: 'outside' })
    // 0.04 of 30 K is 1.2 K, a round -8.8 °C.
    expect(layer.uniforms.uScaleEnd.value).toBeCloseTo(0.04, 12)
    layer.show({ showHeat: true, heatScale: 'whole' })
    expect(layer.uniforms.uScaleEnd.value).toBe(1)
    follower.dispose()
  })

  it('leaves no reading and hears nothing more when it is gone', () => {
    const { layer, follower } = follow()
    useViewStore.getState().set({ showHeat: true })
    arrive(0.5)
    follower.probe(hit)
    follower.dispose()
    expect(probed()).toBeUndefined()
    useHeatField.setState({ answer: undefined })
    expect(layer.uniforms.uFresh.value).toBe(1)
    arrive(0.5)
    expect(probed()).toBeUndefined()
  })
})
