import { PerspectiveCamera, Raycaster, type Scene, Vector2, type WebGLRenderer } from 'three'
import type { Hive } from '../hive/hive.ts'
import { useViewStore, type ViewState } from '../store/viewStore.ts'
import { aimStill, type Still } from './aimStill.ts'
import { paintLabels, placeLabels, writeLabels } from './dimensionLabels.ts'
import { followHeat } from './followHeat.ts'
import { createHiveModel } from './hiveModel.ts'
import { createOrbit } from './orbit.ts'
import { PAPER } from './palette.ts'
import type { Hit } from './pickPart.ts'
import { attachPointerPick } from './pointerPick.ts'

/** The hive on the screen: model, eye and pointer, joined to the view store. */
export interface Stage {
  readonly setHive: (hive: Hive) => void
  readonly setSize: (width: number, height: number) => void
  /** Moves the eye and the figures; call once before each frame. */
  readonly beforeFrame: () => void
  readonly pressKey: (key: string) => boolean
  readonly setTouch: (touch: 'orbit' | 'page-scrolls') => void
  /** Draws a picture and leaves the screen as it was. Undefined before there is a hive. */
  readonly drawStill: (still: Still) => HTMLCanvasElement | undefined
  readonly renderer: WebGLRenderer
  readonly dispose: () => void
}

export interface StageParts {
  readonly gl: WebGLRenderer
  readonly scene: Scene
  readonly camera: PerspectiveCamera
  /** Overlay for the figures of dimensions. */
  readonly labelLayer: HTMLElement
  readonly invalidate: () => void
}

export const createStage = ({ gl, scene, camera, labelLayer, invalidate }: StageParts): Stage => {
  const model = createHiveModel()
  scene.add(model.root)
  gl.localClippingEnabled = true
  gl.setClearColor(PAPER, 0)
  const store = useViewStore
  const canvas = gl.domElement
  const isStill = (): boolean => window.matchMedia('(prefers-reduced-motion: reduce)').matches
  const heat = followHeat(model.heat, { invalidate, isStill })
  const orbit = createOrbit({
    camera,
    element: canvas,
    corners: model.corners,
    bounds: model.bounds,
    face: model.faceEye,
    isStill,
    invalidate,
  })
  const caster = new Raycaster()
  const pointer = new Vector2()
  const hitAt = (at: { readonly x: number; readonly y: number }): Hit | undefined => {
    caster.setFromCamera(pointer.set(at.x, at.y), camera)
    return model.pick(caster.ray)
  }
  const detachPointer = attachPointerPick(canvas, {
    onHover: (at) => {
      const hit = at === undefined ? undefined : hitAt(at)
      const id = hit?.part.id
      canvas.style.cursor = id === undefined ? 'grab' : 'pointer'
      if (store.getState().hoveredPartId !== id) store.getState().set({ hoveredPartId: id })
      heat.probe(hit)
    },
    onTap: (at, { adds }) => {
      const hit = hitAt(at)
      const id = hit?.part.id
      // A finger doesn't hover: its tap reads the temperature.
      heat.probe(hit)
      const before = store.getState().selectedPartIds
      if (id === undefined) store.getState().select(adds ? before : [])
      else if (!adds) store.getState().select([id])
      else store.getState().select(toggled(before, id))
    },
  })

  let hive: Hive | undefined
  let serial = -1
  let size = { width: 1, height: 1 }

  const asksInsideClosed = (view: ViewState): boolean =>
    view.camera.serial !== serial &&
    view.camera.preset === 'inside' &&
    view.lidOpen === 0 &&
    // A step of assembly that looks inside leaves the lid off.
    view.assembly === undefined
  const show = (view: ViewState): void => {
    if (hive === undefined) return
    if (asksInsideClosed(view)) {
      // One can't look into a closed hive; this comes back here with the lid open.
      store.getState().set({ lidOpen: 1 })
      return
    }
    model.show(hive, view)
    if (view.camera.serial !== serial) {
      serial = view.camera.serial
      orbit.look(view.camera.preset)
    }
    invalidate()
  }
  const unsubscribe = store.subscribe((view, previous) => {
    // What only the panels care about draws no frame.
    if (!SHOWN.some((key) => view[key] !== previous[key])) return
    show(view)
    if (MOVES.some((key) => view[key] !== previous[key])) orbit.follow('always')
  })
  const setInk = (width: number, height: number, weight: number): void => {
    model.ink.uResolution.value.set(width, height)
    model.ink.uWeight.value = weight
  }
  const setScreenInk = (): void => {
    const ratio = gl.getPixelRatio()
    setInk(size.width * ratio, size.height * ratio, ratio)
  }
  const drawLabels = (): void => {
    const unit = store.getState().units.length
    writeLabels(labelLayer, placeLabels(model.dimensions(), camera, { ...size, unit }))
  }

  return {
    renderer: gl,
    setHive: (next) => {
      hive = next
      show(store.getState())
      orbit.follow('when-outside')
    },
    setSize: (width, height) => {
      size = { width, height }
      setScreenInk()
      orbit.follow('always')
      invalidate()
    },
    beforeFrame: () => {
      setScreenInk()
      if ([orbit.advance(), heat.advance()].includes(true)) invalidate()
      model.faceEye(orbit.towardsEye())
      drawLabels()
    },
    pressKey: (key) => {
      if (key !== 'Home') return orbit.pressKey(key)
      store.getState().look('three-quarter')
      return true
    },
    setTouch: orbit.setTouch,
    drawStill: (still) => {
      if (hive === undefined) return undefined
      const view = store.getState()
      const eye = still.preset === undefined ? camera.clone() : new PerspectiveCamera(camera.fov)
      const ratio = gl.getPixelRatio()
      const limit = gl.capabilities.maxTextureSize
      const shrink = Math.min(1, limit / still.widthPx, limit / still.heightPx)
      const [width, height] = [still.widthPx, still.heightPx].map((n) => Math.round(n * shrink))
      if (width === undefined || height === undefined) return undefined
      try {
        if (still.change !== undefined) model.show(hive, { ...view, ...still.change })
        if (model.corners().length === 0) return undefined
        aimStill(eye, camera, { still, aspect: width / height, corners: model.corners() })
        gl.setPixelRatio(1)
        gl.setSize(width, height, false)
        // Ink keeps its share of the picture whatever the size.
        const weight = Math.max(1, Math.min(width, height) / 800)
        setInk(width, height, weight)
        gl.setClearColor(PAPER, still.ground === 'paper' ? 1 : 0)
        gl.render(scene, eye)
        // Read in the task that drew it: a canvas without a kept buffer is blank later.
        const unit = view.units.length
        const labels = placeLabels(model.dimensions(), eye, { width, height, unit })
        const picture = copyPicture(canvas, width, height)
        const context = picture.getContext('2d')
        if (context !== null) paintLabels(context, labels, weight)
        return picture
      } finally {
        gl.setClearColor(PAPER, 0)
        gl.setPixelRatio(ratio)
        gl.setSize(size.width, size.height, false)
        setScreenInk()
        model.show(hive, view)
        gl.render(scene, camera)
      }
    },
    dispose: () => {
      unsubscribe()
      heat.dispose()
      detachPointer()
      orbit.dispose()
      scene.remove(model.root)
      model.dispose()
      labelLayer.replaceChildren()
    },
  }
}

const MOVES = [
  'explode',
  'lidOpen',
  'floorOpen',
  'frameLift',
  'liftedFrame',
  'showDimensions',
  'assembly',
] as const
const SHOWN = [
  ...MOVES,
  'sectionAxis',
  'sectionAt',
  'selectedPartIds',
  'hoveredPartId',
  'camera',
  'units',
  'quality',
  'showHeat',
  'heatScale',
] as const

const toggled = (ids: readonly string[], id: string): readonly string[] =>
  ids.includes(id) ? ids.filter((other) => other !== id) : [...ids, id]

const copyPicture = (
  source: HTMLCanvasElement,
  width: number,
  height: number,
): HTMLCanvasElement => {
  const picture = document.createElement('canvas')
  picture.width = width
  picture.height = height
  picture.getContext('2d')?.drawImage(source, 0, 0)
  return picture
}
