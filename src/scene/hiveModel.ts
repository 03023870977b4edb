import { type Data3DTexture, Group, Plane, Vector3 } from 'three'
import { type Box, boundingBox } from '../geometry/box.ts'
import type { Vec3 } from '../geometry/vector.ts'
import type { Hive } from '../hive/hive.ts'
import type { ViewState } from '../store/viewStore.ts'
import { createBoxMesh } from './boxMesh.ts'
import { PRESET_DIRECTIONS } from './cameraPresets.ts'
import { createCapMesh } from './capMesh.ts'
import { type DimensionLine, dimensionKey, dimensionLines } from './dimensionLines.ts'
import { createDimensionMesh } from './dimensionMesh.ts'
import { createGround } from './ground.ts'
import { createHeatLayer, type HeatLayer } from './heatLayer.ts'
import { createLights } from './lights.ts'
import { createInkUniforms, createLineMaterial, type InkUniforms } from './lineMaterial.ts'
import { type Marks, marksOf, partTint, UNMARKED } from './marks.ts'
import { createNoiseTexture } from './noiseTexture.ts'
import { createPartLines } from './partLines.ts'
import { type Hit, pickPart, type Ray } from './pickPart.ts'
import {
  boundsOfPoints,
  closedBounds,
  type PosedPart,
  posedCorners,
  poseParts,
} from './posedPart.ts'
import { createPrismMesh } from './prismMesh.ts'
import { type SectionPlane, sectionCaps } from './sectionCaps.ts'
import { createSurfaceMaterial } from './surfaceMaterial.ts'

/** What of the view state the model shows. */
export type ModelView = Pick<
  ViewState,
  | 'explode'
  | 'lidOpen'
  | 'floorOpen'
  | 'liftedFrame'
  | 'frameLift'
  | 'camera'
  | 'sectionAxis'
  | 'sectionAt'
  | 'selectedPartIds'
  | 'hoveredPartId'
  | 'showDimensions'
  | 'quality'
  | 'showHeat'
  | 'heatScale'
  | 'assembly'
>

/** The hive as three.js objects. Everything is written in place; nothing is built anew for an edit. */
export interface HiveModel {
  readonly root: Group
  readonly ink: InkUniforms
  readonly heat: HeatLayer
  /** Shows `hive` in `view`; does only what differs from the last call. */
  readonly show: (hive: Hive, view: ModelView) => void
  /** Puts the dimensions on the sides that the eye sees. */
  readonly faceEye: (towardsEye: Vec3) => void
  /** Corners of all parts as shown, for fitting the camera. */
  readonly corners: () => readonly Vec3[]
  readonly bounds: () => Box
  /** Dimensions as shown; none when they are switched off or the hive is apart. */
  readonly dimensions: () => readonly DimensionLine[]
  readonly pick: (ray: Ray) => Hit | undefined
  readonly dispose: () => void
}

const NO_CUT = 1e9

export const createHiveModel = (): HiveModel => {
  const noise: Data3DTexture = createNoiseTexture()
  const clip = new Plane(new Vector3(-1, 0, 0), NO_CUT)
  const ink = createInkUniforms()
  const heat = createHeatLayer(ink)
  const surface = createSurfaceMaterial(noise, clip, heat.uniforms)
  const clippedInk = createLineMaterial({ ink, sectionPlane: clip, hidden: false })
  const plainInk = createLineMaterial({ ink, sectionPlane: undefined, hidden: false })
  const hiddenInk = createLineMaterial({ ink, sectionPlane: clip, hidden: true })
  const root = new Group()
  const boxes = createBoxMesh(surface, (next, previous) => {
    if (previous !== undefined) root.remove(previous)
    root.add(next)
  })
  const prisms = createPrismMesh(surface)
  const lines = createPartLines(clippedInk, hiddenInk)
  const caps = createCapMesh(plainInk, heat.uniforms)
  const dimensionMesh = createDimensionMesh(plainInk)
  const ground = createGround()
  const lights = createLights()
  root.add(
    prisms.mesh,
    ...lines.meshes,
    ...caps.meshes,
    dimensionMesh.mesh,
    ground.root,
    lights.root,
  )

  let hive: Hive | undefined
  let view: ModelView | undefined
  let posed: readonly PosedPart[] = []
  let partCorners: readonly Vec3[] = []
  let corners: readonly Vec3[] = []
  let bounds: Box = boundsOfPoints([])
  let closed: Box = bounds
  let plane: SectionPlane | undefined
  let marks: Marks = UNMARKED
  let towardsEye: Vec3 = PRESET_DIRECTIONS['three-quarter']
  let shownDimensions: readonly DimensionLine[] = []

  const tintOf = (id: string): number => partTint(id, marks)

  const writeMarks = (now: ModelView): void => {
    marks = marksOf(now)
    boxes.writeTints(posed, tintOf)
    prisms.write(posed, tintOf)
    lines.writeStyles(posed, marks)
  }

  const writeDimensions = (now: ModelView, d: Hive['dimensions']): void => {
    const isWhole = now.explode < 0.01 && now.assembly === undefined
    const isShown = now.showDimensions && isWhole
    shownDimensions = isShown ? dimensionLines(d, closed, towardsEye) : []
    corners = [...partCorners, ...shownDimensions.flatMap((line) => line.extensions.flat())]
    dimensionMesh.write(shownDimensions)
  }

  const writePlaces = (now: ModelView, d: Hive['dimensions']): void => {
    boxes.writePlaces(posed)
    prisms.write(posed, tintOf)
    lines.writePlaces(posed)
    partCorners = posedCorners(posed)
    bounds = boundsOfPoints(partCorners)
    writeDimensions(now, d)
  }

  const writeSection = (now: ModelView): void => {
    plane = sectionOf(now, closed)
    clip.normal.set(plane?.axis === 'z' ? 0 : -1, 0, plane?.axis === 'z' ? -1 : 0)
    clip.constant = plane?.at ?? NO_CUT
    caps.write(plane === undefined ? [] : sectionCaps(posed, plane))
  }

  return {
    root,
    ink,
    heat,
    show: (nextHive, nextView) => {
      const previous = view
      const isNew = nextHive !== hive
      const differs = (keys: readonly (keyof ModelView)[]): boolean =>
        isNew || previous === undefined || keys.some((k) => previous[k] !== nextView[k])
      const isMoved = differs(POSE_KEYS)
      const wasHidden = posed.some((p) => p.pose.hidden)
      hive = nextHive
      view = nextView
      if (isNew) closed = boundingBox(closedBounds(nextHive))
      if (isMoved) posed = poseParts(nextHive, nextView)
      if (isNew) {
        boxes.writeLooks(posed)
        lines.setParts(posed)
      }
      if (isMoved) writePlaces(nextView, nextHive.dimensions)
      const hides = wasHidden !== posed.some((p) => p.pose.hidden)
      if (hides || differs(MARK_KEYS)) writeMarks(nextView)
      if (isMoved || differs(SECTION_KEYS)) {
        writeSection(nextView)
        const groundY = groundUnder(nextView, nextHive, bounds)
        ground.place(keptBounds(bounds, plane), groundY)
        lights.fit(bounds, groundY)
      }
      // A half-built hive has no temperatures.
      heat.show({ ...nextView, showHeat: nextView.showHeat && nextView.assembly === undefined })
      if (differs(['quality'])) {
        lights.setCast(nextView.quality === 'full')
        ground.setCast(nextView.quality === 'full')
      }
    },
    faceEye: (direction) => {
      const isSame = dimensionKey(direction) === dimensionKey(towardsEye)
      towardsEye = direction
      if (!isSame && hive !== undefined && view !== undefined) {
        writeDimensions(view, hive.dimensions)
      }
    },
    corners: () => corners,
    bounds: () => bounds,
    dimensions: () => shownDimensions,
    pick: (ray) => pickPart(posed, ray, plane),
    dispose: () => {
      for (const owner of [boxes, prisms, lines, caps, dimensionMesh, ground, lights, heat]) {
        owner.dispose()
      }
      for (const material of [surface, clippedInk, plainInk, hiddenInk]) material.dispose()
      noise.dispose()
    },
  }
}

const POSE_KEYS = [
  'explode',
  'lidOpen',
  'floorOpen',
  'liftedFrame',
  'frameLift',
  'camera',
  'showDimensions',
  'assembly',
] as const
const MARK_KEYS = ['selectedPartIds', 'hoveredPartId', 'assembly'] as const
const SECTION_KEYS = ['sectionAxis', 'sectionAt'] as const

/** What is built on the bench stands on the bench, the hive on the ground. */
const groundUnder = (view: ModelView, hive: Hive, bounds: Box): number =>
  view.assembly === undefined ? Math.min(hive.dimensions.groundHeight, bounds.y0) : bounds.y0

const sectionOf = (view: ModelView, closed: Box): SectionPlane | undefined => {
  switch (view.sectionAxis) {
    case 'none':
      return undefined
    case 'x':
      return { axis: 'x', at: closed.x0 + view.sectionAt * (closed.x1 - closed.x0) }
    case 'z':
      return { axis: 'z', at: closed.z0 + view.sectionAt * (closed.z1 - closed.z0) }
  }
}

/** What the section leaves of the box around the model. */
const keptBounds = (b: Box, plane: SectionPlane | undefined): Box => {
  if (plane === undefined) return b
  return plane.axis === 'x'
    ? { ...b, x1: Math.max(b.x0 + 1, Math.min(b.x1, plane.at)) }
    : { ...b, z1: Math.max(b.z0 + 1, Math.min(b.z1, plane.at)) }
}
