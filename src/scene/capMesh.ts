import type { Material } from 'three'
import {
  BufferAttribute,
  BufferGeometry,
  Color,
  DoubleSide,
  DynamicDrawUsage,
  Mesh,
  ShaderMaterial,
} from 'three'
import type { HeatUniforms } from './heatLayer.ts'
import { HEAT_FRAGMENT_HEAD } from './heatShader.ts'
import { createLineBatch } from './lineBatch.ts'
import { type Hatch, INK, lookOf } from './palette.ts'
import { INK_COLOUR } from './partLook.ts'
import { undoPose } from './pose.ts'
import type { SectionCap } from './sectionCaps.ts'

/** The cut faces, filled and hatched, with heavy ink round them. */
export interface CapMesh {
  readonly meshes: readonly Mesh[]
  readonly write: (caps: readonly SectionCap[]) => void
  readonly dispose: () => void
}

const HATCH_CODES: Readonly<Record<Hatch, number>> = { timber: 0, sheet: 1, soft: 2, filled: 3 }
const CUT_WEIGHT = 1.7
/** Sheets thinner than this would drown in their own outline, mm. */
const THIN = 4
const THIN_WEIGHT = 0.6

export const createCapMesh = (ink: Material, heat: HeatUniforms): CapMesh => {
  const material = new ShaderMaterial({
    uniforms: { uInk: { value: new Color(INK) }, ...heat },
    vertexShader: CAP_VERTEX,
    fragmentShader: CAP_FRAGMENT,
    side: DoubleSide,
  })
  const mesh = new Mesh(buildGeometry(0), material)
  mesh.frustumCulled = false
  mesh.renderOrder = 1
  mesh.visible = false
  const outline = createLineBatch(ink, 3)
  return {
    meshes: [mesh, outline.mesh],
    write: (caps) => {
      const needed = caps.reduce(
        (n, cap) => n + cap.pieces.reduce((m, piece) => m + 3 * (piece.length - 2), 0),
        0,
      )
      const capacity = mesh.geometry.getAttribute('position').count
      if (needed > capacity) {
        mesh.geometry.dispose()
        mesh.geometry = buildGeometry(Math.max(needed, 2 * capacity))
      }
      writeFaces(mesh.geometry, caps)
      mesh.visible = needed > 0
      writeOutlines(outline, caps)
    },
    dispose: () => {
      mesh.geometry.dispose()
      material.dispose()
      outline.dispose()
    },
  }
}

const ATTRIBUTES = { position: 3, aClosed: 3, aColour: 3, aHatch: 2 } as const

const buildGeometry = (capacity: number): BufferGeometry => {
  const geometry = new BufferGeometry()
  for (const [name, width] of Object.entries(ATTRIBUTES)) {
    const attribute = new BufferAttribute(new Float32Array(capacity * width), width)
    geometry.setAttribute(name, attribute.setUsage(DynamicDrawUsage))
  }
  return geometry
}

const writeFaces = (geometry: BufferGeometry, caps: readonly SectionCap[]): void => {
  const position = geometry.getAttribute('position')
  const closed = geometry.getAttribute('aClosed')
  const colour = geometry.getAttribute('aColour')
  const hatch = geometry.getAttribute('aHatch')
  const tone = new Color()
  let i = 0
  caps.forEach((cap, n) => {
    const look = lookOf(cap.material)
    tone.set(look.colour)
    for (const piece of cap.pieces) {
      for (let k = 1; k < piece.length - 1; k++) {
        for (const p of [piece[0], piece[k], piece[k + 1]]) {
          if (p === undefined) continue
          position.setXYZ(i, p.x, p.y, p.z)
          const home = undoPose(cap.pose, p)
          closed.setXYZ(i, home.x, home.y, home.z)
          colour.setXYZ(i, tone.r, tone.g, tone.b)
          // Neighbours in the list are mostly neighbours in the hive: their hatching leans both ways.
          hatch.setXY(i, HATCH_CODES[look.hatch], n % 2)
          i++
        }
      }
    }
  })
  geometry.setDrawRange(0, i)
  for (const name of Object.keys(ATTRIBUTES)) geometry.getAttribute(name).needsUpdate = true
}

const writeOutlines = (
  batch: ReturnType<typeof createLineBatch>,
  caps: readonly SectionCap[],
): void => {
  const rows = batch.reserve(caps.reduce((n, cap) => n + cap.outline.length / 6, 0))
  let at = 0
  for (const { outline, thickness } of caps) {
    const weight = thickness < THIN ? THIN_WEIGHT : CUT_WEIGHT
    for (let i = 0; i < outline.length; i += 6, at++) {
      rows.start.set(outline.slice(i, i + 3), 3 * at)
      rows.end.set(outline.slice(i + 3, i + 6), 3 * at)
      rows.weight[at] = weight
      rows.ink.set([...INK_COLOUR, 255], 4 * at)
    }
  }
  batch.send('all')
}

const CAP_VERTEX = /* glsl */ `
attribute vec3 aClosed; // the place in the closed hive, mm
attribute vec3 aColour;
attribute vec2 aHatch;
varying vec3 vColour;
varying vec3 vPlace;
varying vec3 vClosed;
flat varying vec2 vHatch;
void main() {
  vColour = aColour;
  vPlace = position;
  vClosed = aClosed;
  vHatch = aHatch;
  gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
}
`

const CAP_FRAGMENT = /* glsl */ `
uniform vec3 uInk;
varying vec3 vColour;
varying vec3 vPlace;
varying vec3 vClosed;
flat varying vec2 vHatch;
${HEAT_FRAGMENT_HEAD}

// Share of ink in parallel lines \`gap\` mm apart and \`thick\` mm thick, paler as they close up.
float lines(float t, float gap, float thick) {
  float w = fwidth(t);
  float d = abs(fract(t / gap) - 0.5) * gap;
  float edge = 0.5 * gap - d;
  float sharp = 1.0 - smoothstep(0.5 * thick, 0.5 * thick + w, edge);
  return mix(sharp, thick / gap, smoothstep(0.25 * gap, 0.8 * gap, w));
}

vec3 materialColour() {
  // The plane stands across x or z, so its own coordinates are the other level one and y.
  vec2 p = vec2(vPlace.x + vPlace.z, vPlace.y);
  float lean = vHatch.y < 0.5 ? 1.0 : -1.0;
  float slant = (p.x * lean + p.y) * 0.7071;
  vec3 base = vColour * 0.97;
  float ink = 0.0;
  if (vHatch.x < 0.5) ink = 0.55 * lines(slant, 9.0, 0.8);
  else if (vHatch.x < 1.5) { ink = 0.6 * lines(slant, 3.6, 0.55); base *= 0.9; }
  else if (vHatch.x < 2.5) {
    // Soft insulation: crossing waves.
    float wave = 8.5 * sin(p.x * 0.125);
    ink = 0.2 * max(lines(p.y + wave, 34.0, 0.8), lines(p.y - wave + 17.0, 34.0, 0.8));
  } else base = mix(base, uInk, 0.35);
  return mix(base, uInk, ink);
}

void main() {
  gl_FragColor = vec4(uHeat > 0.5 ? heatColour(vClosed) : materialColour(), 1.0);
  #include <colorspace_fragment>
}
`
