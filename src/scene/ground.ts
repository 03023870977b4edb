import {
  Color,
  FrontSide,
  Group,
  Mesh,
  PlaneGeometry,
  ShaderMaterial,
  ShadowMaterial,
  Vector2,
} from 'three'
import type { Box } from '../geometry/box.ts'

/** The paper under the hive: nothing but shadow, so that the page itself is the ground. */
export interface Ground {
  readonly root: Group
  readonly place: (bounds: Box, groundY: number) => void
  readonly setCast: (isCast: boolean) => void
  readonly dispose: () => void
}

const SHADOW_TONE = '#4a3b28'

export const createGround = (): Ground => {
  const geometry = new PlaneGeometry(1, 1)
  geometry.rotateX(-Math.PI / 2)
  const cast = new ShadowMaterial({ color: SHADOW_TONE, opacity: 0.24, side: FrontSide })
  cast.depthWrite = false
  softenShadow(cast)
  const contact = createContactMaterial()
  const castPlane = new Mesh(geometry, cast)
  castPlane.receiveShadow = true
  castPlane.renderOrder = -1
  const contactPlane = new Mesh(geometry, contact)
  contactPlane.renderOrder = -2
  const root = new Group()
  root.add(contactPlane, castPlane)
  return {
    root,
    place: (b, groundY) => {
      const [x, z] = [(b.x0 + b.x1) / 2, (b.z0 + b.z1) / 2]
      const [dx, dz, dy] = [b.x1 - b.x0, b.z1 - b.z0, b.y1 - groundY]
      root.position.set(x, groundY - 1, z)
      castPlane.scale.set(dx + 6 * dy, 1, dz + 6 * dy)
      contactPlane.scale.set(2 * dx + dy, 1, 2 * dz + dy)
      const size = contactPlane.scale
      contact.uniforms.uPlane?.value.set(size.x, size.z)
      contact.uniforms.uHalf?.value.set(dx / 2, dz / 2)
      // The higher the body stands, the softer its contact shadow.
      if (contact.uniforms.uBlur !== undefined) contact.uniforms.uBlur.value = 0.16 * dy + 40
    },
    setCast: (isCast) => {
      castPlane.visible = isCast
    },
    dispose: () => {
      geometry.dispose()
      cast.dispose()
      contact.dispose()
    },
  }
}

/**
 * Reads the shadow map through a wide fixed disk. The shadow is so pale that the steps between 24
 * readings are finer than a screen can show, so no noise is needed.
 */
const softenShadow = (material: ShadowMaterial): void => {
  material.onBeforeCompile = (shader) => {
    shader.fragmentShader = shader.fragmentShader
      .replace('void main() {', `${SOFT_SHADOW}\nvoid main() {`)
      .replace('getShadowMask()', 'softMask()')
  }
}

const SOFT_SHADOW = /* glsl */ `
float softMask() {
  #if defined( USE_SHADOWMAP ) && defined( SHADOWMAP_TYPE_PCF ) && NUM_DIR_LIGHT_SHADOWS > 0
    vec3 at = vDirectionalShadowCoord[0].xyz / vDirectionalShadowCoord[0].w;
    if (any(lessThan(at, vec3(0.0))) || any(greaterThan(at, vec3(1.0)))) return 1.0;
    vec2 texel = 1.0 / directionalLightShadows[0].shadowMapSize;
    float lit = 0.0;
    for (int i = 0; i < 24; i++) {
      vec2 to = vogelDiskSample(i, 24, 0.0) * texel * 20.0;
      lit += texture(directionalShadowMap[0], vec3(at.xy + to, at.z));
    }
    return lit / 24.0;
  #else
    return 1.0;
  #endif
}
`

/**
 * The shadow of a rectangle under a wide sky: a box blurred by a Gaussian, which is a product of
 * differences of error functions. The logistic curve stands in for the error function.
 */
const createContactMaterial = (): ShaderMaterial =>
  new ShaderMaterial({
    uniforms: {
      uPlane: { value: new Vector2(1, 1) },
      uHalf: { value: new Vector2(1, 1) },
      uBlur: { value: 100 },
      uTone: { value: new Color(SHADOW_TONE) },
    },
    vertexShader: /* glsl */ `
      uniform vec2 uPlane;
      varying vec2 vPlace;
      void main() {
        vPlace = position.xz * uPlane;
        gl_Position = projectionMatrix * modelViewMatrix * vec4(position, 1.0);
      }
    `,
    fragmentShader: /* glsl */ `
      uniform vec2 uHalf;
      uniform float uBlur;
      uniform vec3 uTone;
      varying vec2 vPlace;
      vec2 step01(vec2 t) { return 1.0 / (1.0 + exp(-1.702 * t / uBlur)); }
      void main() {
        vec2 inside = step01(vPlace + uHalf) - step01(vPlace - uHalf);
        // Half a step of noise hides the steps of eight bits in so slow a fade.
        float grain = fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715))));
        gl_FragColor = vec4(uTone, 0.3 * inside.x * inside.y + (grain - 0.5) / 160.0 * step(0.001, inside.x * inside.y));
        #include <colorspace_fragment>
      }
    `,
    transparent: true,
    depthWrite: false,
    side: FrontSide,
  })
