import { COOLING_MM } from './heatShare.ts'

/**
 * GLSL that shows a temperature field as colour: shared by surfaces and cut faces. Points are those
 * of the closed hive, mm, so that parts keep their colours when they are moved. The mixing between
 * eight crossings is done here, not by the texture unit, whose fractions are too coarse for thin lines.
 */
export const HEAT_FRAGMENT_HEAD = /* glsl */ `
uniform float uHeat; // 1 shows temperature, 0 material
uniform float uFresh; // 1 for the present design, 0 for an old one
uniform highp sampler3D uField;
uniform highp sampler2D uPlanes; // one row for each axis, see planeLookup.ts
uniform sampler2D uScale;
uniform float uScaleEnd; // the share that has the last colour
uniform vec3 uFieldFrom; // mm
uniform vec3 uFieldTo; // mm
uniform vec3 uLevels; // first share, step, count
uniform vec3 uIsotherm; // colour
uniform float uWeight; // device pixels for one unit of line weight

float placeAlong(int axis, float reach, float extent) {
  int buckets = textureSize(uPlanes, 0).x;
  int i = clamp(int(reach / extent * float(buckets)), 0, buckets - 1);
  vec4 row = texelFetch(uPlanes, ivec2(i, axis), 0);
  float d = reach * 0.001 - row.x;
  return row.y + d * (d < 0.0 ? row.z : row.w);
}

float fieldAt(ivec3 at) { return texelFetch(uField, at, 0).r; }

float heatShare(vec3 mm) {
  vec3 within = clamp(mm, uFieldFrom, uFieldTo);
  vec3 reach = within - uFieldFrom;
  vec3 extent = uFieldTo - uFieldFrom;
  vec3 place = vec3(
    placeAlong(0, reach.x, extent.x),
    placeAlong(1, reach.y, extent.y),
    placeAlong(2, reach.z, extent.z)
  );
  ivec3 low = clamp(ivec3(place), ivec3(0), textureSize(uField, 0) - 2);
  vec3 f = clamp(place - vec3(low), 0.0, 1.0);
  vec4 along = mix(
    vec4(fieldAt(low), fieldAt(low + ivec3(0, 1, 0)), fieldAt(low + ivec3(0, 0, 1)), fieldAt(low + ivec3(0, 1, 1))),
    vec4(fieldAt(low + ivec3(1, 0, 0)), fieldAt(low + ivec3(1, 1, 0)), fieldAt(low + ivec3(1, 0, 1)), fieldAt(low + 1)),
    f.x
  );
  vec2 over = mix(along.xz, along.yw, f.y);
  float kept = 1.0 - smoothstep(0.0, ${COOLING_MM.toFixed(1)}, distance(mm, within));
  return kept * mix(over.x, over.y, f.z);
}

// Share of ink on lines of equal temperature; none where they would crowd into a tone, or on a plateau.
float isotherm(float share) {
  float level = (share - uLevels.x) / uLevels.y;
  float change = length(vec2(dFdx(level), dFdy(level)));
  if (uLevels.z < 0.5 || change < 1e-5) return 0.0;
  float off = abs(level - clamp(round(level), 0.0, uLevels.z - 1.0)) / change;
  float cover = clamp(0.5 * uWeight + 0.5 - off, 0.0, 1.0);
  return cover * (1.0 - smoothstep(0.15, 0.4, change * uWeight));
}

vec3 heatColour(vec3 mm) {
  float share = heatShare(mm);
  vec3 colour = texture(uScale, vec2((clamp(share / uScaleEnd, 0.0, 1.0) * 255.0 + 0.5) / 256.0, 0.5)).rgb;
  colour = mix(colour, uIsotherm, 0.7 * isotherm(share));
  vec3 faded = mix(vec3(dot(colour, vec3(0.2126, 0.7152, 0.0722))), vec3(0.62), 0.25);
  return mix(faded, colour, mix(0.35, 1.0, uFresh));
}
`
