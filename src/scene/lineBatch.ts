import {
  DynamicDrawUsage,
  Float32BufferAttribute,
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  type Material,
  Mesh,
} from 'three'

/** The raw rows of a batch of segments: one entry, or three or four numbers, for each segment. */
export interface LineRows {
  readonly start: Float32Array
  readonly end: Float32Array
  /** Pixels; 0 draws nothing. */
  readonly weight: Float32Array
  /** sRGB and alpha, bytes. */
  readonly ink: Uint8Array
}

/** Segments that are drawn in one call. */
export interface LineBatch {
  readonly mesh: Mesh
  /** Makes room for `count` segments and gives the rows to fill. Doubles when it must grow. */
  readonly reserve: (count: number) => LineRows
  /** Sends what was written. */
  readonly send: (what: 'places' | 'styles' | 'all') => void
  readonly dispose: () => void
}

export const createLineBatch = (material: Material, renderOrder: number): LineBatch => {
  let rows = buildRows(128)
  const mesh = new Mesh(buildGeometry(rows), material)
  mesh.frustumCulled = false
  mesh.renderOrder = renderOrder
  mesh.visible = false
  const geometry = (): InstancedBufferGeometry => mesh.geometry as InstancedBufferGeometry
  return {
    mesh,
    reserve: (count) => {
      if (count > rows.weight.length) {
        geometry().dispose()
        rows = buildRows(Math.max(count, 2 * rows.weight.length))
        mesh.geometry = buildGeometry(rows)
      }
      geometry().instanceCount = count
      mesh.visible = count > 0
      return rows
    },
    send: (what) => {
      const names = what === 'all' ? [...PLACES, ...STYLES] : what === 'places' ? PLACES : STYLES
      for (const name of names) geometry().getAttribute(name).needsUpdate = true
    },
    dispose: () => geometry().dispose(),
  }
}

const PLACES = ['aStart', 'aEnd'] as const
const STYLES = ['aWeight', 'aInk'] as const

const buildRows = (capacity: number): LineRows => ({
  start: new Float32Array(3 * capacity),
  end: new Float32Array(3 * capacity),
  weight: new Float32Array(capacity),
  ink: new Uint8Array(4 * capacity),
})

const buildGeometry = (rows: LineRows): InstancedBufferGeometry => {
  const geometry = new InstancedBufferGeometry()
  // One rectangle: x is the end (0 start, 1 end), y the side of the line.
  const corners = [0, -1, 0, 1, -1, 0, 1, 1, 0, 0, 1, 0]
  geometry.setAttribute('position', new Float32BufferAttribute(corners, 3))
  geometry.setIndex([0, 1, 2, 0, 2, 3])
  const add = (name: string, attribute: InstancedBufferAttribute): void => {
    geometry.setAttribute(name, attribute.setUsage(DynamicDrawUsage))
  }
  add('aStart', new InstancedBufferAttribute(rows.start, 3))
  add('aEnd', new InstancedBufferAttribute(rows.end, 3))
  add('aWeight', new InstancedBufferAttribute(rows.weight, 1))
  add('aInk', new InstancedBufferAttribute(rows.ink, 4, true))
  return geometry
}
