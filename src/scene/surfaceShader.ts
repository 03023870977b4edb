/**
 * GLSL for the surfaces of all materials. Patterns live in the piece of material itself: they are
 * measured in millimetres from the part's corner in the closed hive, so that grain runs through the
 * whole piece, is never stretched, and moves with the part.
 */

export const SURFACE_VERTEX_HEAD = /* glsl */ `
#ifdef USE_INSTANCING
  attribute vec3 aOrigin; // from the part's low corner to this solid's, mm
  attribute vec3 aSize; // of this solid, mm
#else
  attribute vec3 aLocal; // from the part's low corner, mm
  attribute vec3 aFace; // normal in the closed hive
#endif
attribute vec3 aLow; // the part's low corner in the closed hive, mm
attribute vec3 aPart; // size of the box around the part, mm
attribute vec3 aColour; // linear
attribute vec4 aKind; // surface code, grain axis (3: none), seed 0..1, amber tint 0..1 (below 0: paper)
varying vec3 vLocal;
varying vec3 vFace;
flat varying vec3 vLow;
flat varying vec3 vPart;
flat varying vec3 vColour;
flat varying vec4 vKind;
`

export const SURFACE_VERTEX_BODY = /* glsl */ `
#ifdef USE_INSTANCING
  vLocal = aOrigin + (position + 0.5) * aSize;
  vFace = normal;
#else
  vLocal = aLocal;
  vFace = aFace;
#endif
vLow = aLow;
vPart = aPart;
vColour = aColour;
vKind = aKind;
`

export const SURFACE_FRAGMENT_HEAD = /* glsl */ `
precision highp sampler3D;
uniform sampler3D uNoise;
uniform vec3 uAmber;
varying vec3 vLocal;
varying vec3 vFace;
flat varying vec3 vLow;
flat varying vec3 vPart;
flat varying vec3 vColour;
flat varying vec4 vKind;

float noiseAt(vec3 p) { return texture(uNoise, p / 32.0).r; }
float footprint(vec3 p) { return max(max(fwidth(p.x), fwidth(p.y)), fwidth(p.z)); }
vec3 turnToGrain(vec3 p, float axis) {
  return axis < 0.5 || axis > 2.5 ? p.xyz : axis < 1.5 ? p.yzx : p.zxy;
}

// Growth rings about a pith beside the board, so that faces, edges and ends belong together.
vec3 woodColour(vec3 colour, float ringMm, float contrast) {
  float axis = vKind.y;
  float seed = vKind.z;
  vec3 q = turnToGrain(vLocal, axis);
  vec3 size = turnToGrain(vPart, axis);
  vec3 face = abs(turnToGrain(vFace, axis));
  float h1 = fract(seed * 17.31);
  float h2 = fract(seed * 53.77);
  vec3 shift = vec3(seed * 977.0, h1 * 311.0, h2 * 173.0);
  vec2 thin = size.y < size.z ? vec2(1.0, 0.0) : vec2(0.0, 1.0);
  vec2 pith = size.yz * 0.5 + thin * (h2 < 0.5 ? -1.0 : 1.0) * (34.0 + 70.0 * h1)
    + thin.yx * (h2 - 0.5) * 90.0;
  float wobble = noiseAt(shift + q * vec3(0.006, 0.03, 0.03)) - 0.5;
  float drift = noiseAt(shift.zxy + q * vec3(0.0022, 0.011, 0.011)) - 0.5;
  vec2 d = q.yz - pith;
  float rings = (length(d) + wobble * 7.0 + drift * 26.0) / ringMm;
  float f = fract(rings);
  float late = smoothstep(0.25, 0.86, f) * (1.0 - smoothstep(0.9, 1.0, f));
  float fade = 1.0 - smoothstep(0.3, 0.9, fwidth(rings));
  float fibreScale = 1.0 - smoothstep(0.5, 2.2, footprint(q));
  float fibre = noiseAt(shift.yzx + q * vec3(0.05, 0.9, 0.9)) - 0.5;
  float broad = noiseAt(shift + q * vec3(0.004, 0.06, 0.06)) - 0.5;
  float end = step(0.5, face.x) * (1.0 - step(2.5, axis));
  float tone = 1.0 - contrast * (late - 0.4) * fade * mix(1.0, 1.5, end)
    + 0.13 * fibre * fibreScale + 0.09 * broad;
  vec3 warm = vec3(1.0, 0.965, 0.9);
  vec3 c = colour * (0.95 + 0.1 * h1) * tone;
  c *= mix(vec3(1.0), warm, late * fade * 0.8);
  return c * mix(1.0, 0.8, end);
}

float isEdge(float thickness, vec3 n, vec3 size) {
  vec3 m = step(size, vec3(thickness + 0.01));
  return 1.0 - step(0.5, dot(abs(n), m / max(1.0, m.x + m.y + m.z)));
}

vec3 plyColour(vec3 colour) {
  float thickness = min(vPart.x, min(vPart.y, vPart.z));
  float across = vPart.x <= thickness ? vLocal.x : vPart.y <= thickness ? vLocal.y : vLocal.z;
  vec3 face = woodColour(colour, 22.0, 0.09);
  if (isEdge(thickness, vFace, vPart) < 0.5) return face;
  // An odd number of plies near 2.5 mm; every other one shows its ends and looks darker.
  float plies = max(3.0, 2.0 * floor(thickness / 5.0) + 1.0);
  float t = across / thickness * plies;
  float w = fwidth(t);
  float saw = abs(fract(t * 0.5) * 2.0 - 1.0);
  float band = smoothstep(0.5 - w, 0.5 + w, saw);
  return colour * mix(0.86, mix(0.66, 0.97, band), 1.0 - smoothstep(0.5, 1.4, w));
}

// Rows of hexagons, for comb only: dark cell walls at the usual 5.4 mm across the flats.
float combWall(vec2 p) {
  vec2 s = vec2(5.4, 9.353);
  vec2 a = mod(p, s) - s * 0.5;
  vec2 b = mod(p - s * 0.5, s) - s * 0.5;
  vec2 g = dot(a, a) < dot(b, b) ? a : b;
  vec2 q = abs(g);
  float d = 2.7 - max(q.x, dot(q, vec2(0.5, 0.866)));
  float w = max(fwidth(p.x), fwidth(p.y));
  return (1.0 - smoothstep(0.35, 0.35 + w, d)) * (1.0 - smoothstep(0.8, 2.4, w));
}

vec2 onFace(vec3 p) {
  vec3 n = abs(vFace);
  return n.x > 0.5 ? p.zy : n.y > 0.5 ? p.xz : p.xy;
}

vec3 metalColour(vec3 colour, vec3 viewNormal, vec3 toEye) {
  float brush = noiseAt(vLocal * vec3(0.02, 0.6, 0.6) + vKind.z * 300.0) - 0.5;
  float sky = reflect(-toEye, viewNormal).y;
  return colour * (0.8 + 0.24 * smoothstep(-0.7, 0.95, sky) + 0.09 * brush);
}

vec3 surfaceColour(vec3 viewNormal, vec3 toEye) {
  float kind = vKind.x;
  vec3 c = vColour;
  if (kind < 0.5) return woodColour(c, 8.0, 0.2);
  if (kind < 1.5) return woodColour(c, 5.0, 0.16);
  if (kind < 2.5) return plyColour(c);
  vec3 p = vLocal + vKind.z * 400.0;
  float size = footprint(vLocal);
  if (kind < 3.5) {
    float flakes = noiseAt(p * vec3(0.12, 0.31, 0.12)) + noiseAt(p.zxy * vec3(0.45, 0.12, 0.12));
    return c * (0.9 + 0.1 * flakes);
  }
  if (kind < 5.5) {
    float thickness = min(vPart.x, min(vPart.y, vPart.z));
    bool foil = kind > 4.5 && isEdge(thickness, vFace, vPart) < 0.5;
    if (foil) return metalColour(c, viewNormal, toEye);
    vec3 core = kind > 4.5 ? vec3(0.8, 0.72, 0.5) : c;
    float bead = noiseAt(p * 0.42) * 0.6 + noiseAt(p * 0.16) * 0.4;
    return core * (1.0 + 0.12 * (bead - 0.5) * (1.0 - smoothstep(1.5, 5.0, size)));
  }
  if (kind < 6.5) {
    float strands = noiseAt(p * vec3(0.06, 0.5, 0.5)) + noiseAt(p.yzx * vec3(0.05, 0.4, 0.4));
    return c * (0.8 + 0.2 * strands);
  }
  if (kind < 7.5) return metalColour(c, viewNormal, toEye);
  if (kind < 8.5) return c * (0.94 + 0.12 * noiseAt(p * 0.9));
  vec2 f = onFace(vLocal);
  if (kind < 9.5) {
    vec2 weave = abs(fract(f / 3.0) - 0.5);
    float fade = 1.0 - smoothstep(0.5, 1.6, size);
    return c * (1.0 + 0.22 * (weave.x * weave.y * 4.0 - 0.4) * fade);
  }
  if (kind < 10.5) {
    float wall = combWall(f);
    return c * (0.94 + 0.14 * noiseAt(p * 0.05)) * (1.0 - 0.2 * wall);
  }
  // Woven steel: open between the wires when near, a half-tone screen when far.
  vec2 cell = abs(fract(f / 3.2) - 0.5);
  bool wire = size < 1.2 ? max(cell.x, cell.y) > 0.34 : mod(floor(gl_FragCoord.x) + floor(gl_FragCoord.y), 2.0) < 0.5;
  if (!wire) discard;
  return c;
}
`

/** Goes after the normal is known and before the light is added. */
export const SURFACE_FRAGMENT_BODY = /* glsl */ `
diffuseColor.rgb = surfaceColour(normal, normalize(vViewPosition));
float grey = dot(diffuseColor.rgb, vec3(0.333));
diffuseColor.rgb = mix(diffuseColor.rgb, uAmber * (0.5 + 0.6 * grey) * 1.25, max(0.0, vKind.w));
diffuseColor.rgb = mix(diffuseColor.rgb, vec3(0.86, 0.84, 0.8) * (0.72 + 0.28 * grey), max(0.0, -vKind.w));
// Heat wants the light alone.
if (uHeat > 0.5) diffuseColor.rgb = vec3(1.0);
`

/**
 * Goes after the light is added. Colours of heat must match the legend, so the light is squeezed to
 * a little shade; and a tint would look like another temperature, so what is marked is striped.
 */
export const SURFACE_FRAGMENT_HEAT = /* glsl */ `
if (uHeat > 0.5) {
  float lit = dot(outgoingLight, vec3(0.2126, 0.7152, 0.0722));
  float stripe = abs(fract((gl_FragCoord.x + gl_FragCoord.y) / (11.0 * uWeight)) - 0.5) * 11.0;
  float marked = max(0.0, vKind.w) * 1.7 * (1.0 - smoothstep(0.8, 1.5, stripe));
  vec3 heat = mix(heatColour(vLow + vLocal), uAmber * 0.8, marked);
  // About three steps of CIE lightness; more where it is coldest, as there is nothing colder to read.
  float shade = mix(0.62, 0.9, smoothstep(0.07, 0.17, dot(heat, vec3(0.2126, 0.7152, 0.0722))));
  outgoingLight = heat * mix(shade, 1.0, smoothstep(0.45, 1.05, lit));
}
`
