import { Color, type Data3DTexture, MeshLambertMaterial, type Plane } from 'three'
import type { HeatUniforms } from './heatLayer.ts'
import { HEAT_FRAGMENT_HEAD } from './heatShader.ts'
import { AMBER } from './palette.ts'
import {
  SURFACE_FRAGMENT_BODY,
  SURFACE_FRAGMENT_HEAD,
  SURFACE_FRAGMENT_HEAT,
  SURFACE_VERTEX_BODY,
  SURFACE_VERTEX_HEAD,
} from './surfaceShader.ts'

/**
 * The one material of all parts: matt, lit, its colour and pattern taken from attributes. The section
 * plane is always on, and far away when there is no section, so that cutting compiles nothing; so are
 * the colours of heat, behind a switch.
 */
export const createSurfaceMaterial = (
  noise: Data3DTexture,
  sectionPlane: Plane,
  heat: HeatUniforms,
): MeshLambertMaterial => {
  const material = new MeshLambertMaterial({
    clippingPlanes: [sectionPlane],
    clipShadows: true,
    polygonOffset: true,
    polygonOffsetFactor: 0.6,
    polygonOffsetUnits: 1,
  })
  material.onBeforeCompile = (shader) => {
    Object.assign(shader.uniforms, heat)
    shader.uniforms.uNoise = { value: noise }
    shader.uniforms.uAmber = { value: new Color(AMBER) }
    shader.vertexShader = shader.vertexShader.replace(
      'void main() {',
      `${SURFACE_VERTEX_HEAD}\nvoid main() {\n${SURFACE_VERTEX_BODY}`,
    )
    shader.fragmentShader = shader.fragmentShader
      .replace('void main() {', `${SURFACE_FRAGMENT_HEAD}\n${HEAT_FRAGMENT_HEAD}\nvoid main() {`)
      .replace(
        '#include <normal_fragment_maps>',
        `#include <normal_fragment_maps>\n${SURFACE_FRAGMENT_BODY}`,
      )
      .replace('#include <opaque_fragment>', `${SURFACE_FRAGMENT_HEAT}\n#include <opaque_fragment>`)
  }
  return material
}
