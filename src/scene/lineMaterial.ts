import { type Plane, ShaderMaterial, Vector2 } from 'three'

/** Uniforms that the renderer's size sets; shared by all ink. */
export interface InkUniforms {
  readonly uResolution: { readonly value: Vector2 }
  /** Device pixels for one unit of line weight. */
  readonly uWeight: { value: number }
}

export const createInkUniforms = (): InkUniforms => ({
  uResolution: { value: new Vector2(1, 1) },
  uWeight: { value: 1 },
})

/**
 * Ink lines of a weight in pixels: each instance is one segment, drawn as a thin rectangle on the
 * screen. `hidden` draws the selected part's far edges over everything, dashed, as a drawing does.
 */
export const createLineMaterial = (options: {
  readonly ink: InkUniforms
  readonly sectionPlane: Plane | undefined
  readonly hidden: boolean
}): ShaderMaterial =>
  new ShaderMaterial({
    uniforms: { ...options.ink },
    defines: options.hidden ? { DASHED: '' } : {},
    vertexShader: LINE_VERTEX,
    fragmentShader: LINE_FRAGMENT,
    transparent: true,
    depthWrite: false,
    depthTest: !options.hidden,
    clipping: options.sectionPlane !== undefined,
    clippingPlanes: options.sectionPlane === undefined ? null : [options.sectionPlane],
  })

const LINE_VERTEX = /* glsl */ `
#include <clipping_planes_pars_vertex>
attribute vec3 aStart;
attribute vec3 aEnd;
attribute float aWeight; // px; 0 draws nothing
attribute vec4 aInk; // sRGB and alpha
uniform vec2 uResolution;
uniform float uWeight;
varying vec4 vInk;
varying float vAcross;
varying float vHalf;
varying float vAlong;

// Lines stand a hair nearer to the eye than the faces that they bound.
const float NEARER = 1.0 - 0.00015;

void main() {
  vec4 a = modelViewMatrix * vec4(aStart, 1.0);
  vec4 b = modelViewMatrix * vec4(aEnd, 1.0);
  // What lies behind the eye is drawn back to just in front of it.
  float near = -1.0;
  if (a.z > near && b.z < near) a = mix(b, a, (near - b.z) / (a.z - b.z));
  else if (b.z > near && a.z < near) b = mix(a, b, (near - a.z) / (b.z - a.z));
  vec4 ca = projectionMatrix * vec4(a.xyz * NEARER, 1.0);
  vec4 cb = projectionMatrix * vec4(b.xyz * NEARER, 1.0);
  vec2 pa = ca.xy / ca.w * uResolution * 0.5;
  vec2 pb = cb.xy / cb.w * uResolution * 0.5;
  vec2 along = pb - pa;
  float len = length(along);
  along = len > 1e-4 ? along / len : vec2(1.0, 0.0);
  float halfWidth = max(0.5 * aWeight * uWeight, 0.35);
  vec4 mvPosition = position.x < 0.5 ? a : b;
  vec4 clip = position.x < 0.5 ? ca : cb;
  // Half a pixel more for the soft edge; square ends a little long, so that corners close.
  float reach = halfWidth + 0.5;
  vec2 push = vec2(-along.y, along.x) * position.y * reach
    + along * (position.x < 0.5 ? -1.0 : 1.0) * halfWidth * 0.5;
  clip.xy += push / (uResolution * 0.5) * clip.w;
  vAcross = position.y * reach;
  vHalf = halfWidth;
  vAlong = position.x * len;
  vInk = aInk;
  // A line too thin for its pixels is drawn paler instead.
  vInk.a *= min(1.0, aWeight * uWeight / 0.7);
  gl_Position = aWeight > 0.0 ? clip : vec4(2.0, 2.0, 2.0, 1.0);
  #include <clipping_planes_vertex>
}
`

const LINE_FRAGMENT = /* glsl */ `
#include <clipping_planes_pars_fragment>
uniform float uWeight;
varying vec4 vInk;
varying float vAcross;
varying float vHalf;
varying float vAlong;
void main() {
  #include <clipping_planes_fragment>
  float cover = clamp(vHalf + 0.5 - abs(vAcross), 0.0, 1.0);
  #ifdef DASHED
    if (fract(vAlong / (9.0 * uWeight)) > 0.6) discard;
  #endif
  gl_FragColor = vec4(vInk.rgb, vInk.a * cover);
}
`
