import type { TemperatureUnit } from '../../../units/temperature.ts'

/** A colour in sRGB, 0 to 255 each. */
export interface Rgb {
  readonly r: number
  readonly g: number
  readonly b: number
}

/**
 * The colour of a temperature: `share` 0 is the air outside, 1 the air inside; clamped. From ink blue
 * over slate and warm grey to wax and straw. Lightness rises evenly, so that the scale reads the same
 * in grey and to eyes that tell few hues apart.
 */
export const heatColour = (share: number): Rgb => {
  const s = Math.min(1, Math.max(0, Number.isFinite(share) ? share : 0))
  const [a, b] = tintAt(s)
  const [red, green, blue] = toLinear(DARKEST + (LIGHTEST - DARKEST) * s, a, b)
  return { r: toByte(red), g: toByte(green), b: toByte(blue) }
}

/** One line of equal temperature. */
export interface HeatLevel {
  readonly celsius: number
  readonly share: number
}

/**
 * Round temperatures strictly between outside and inside, for isotherms and the legend, the coldest
 * first: every 5 K, or 2 K or 10 K where only that gives between 4 and 9 lines, else the round step
 * that comes nearest, down to 0.1 K; in Fahrenheit 10 °F, 5 or 20, down to 0.1. Empty when inside and
 * outside are equally warm.
 */
export const heatLevels = (
  outsideC: number,
  insideC: number,
  unit: TemperatureUnit,
): readonly HeatLevel[] => {
  const span = insideC - outsideC
  if (!Number.isFinite(span) || Math.abs(span) < 1e-9) return []
  const [from, to] = [outsideC, insideC].map((c) => toDegrees(c, unit)).sort((a, b) => a - b)
  if (from === undefined || to === undefined) return []
  const choices = STEPS[unit].map((step) => multiplesBetween(from, to, step))
  const best = choices.reduce((a, b) => (missedLines(b) < missedLines(a) ? b : a))
  return best.map((degrees) => {
    const celsius = toCelsius(degrees, unit)
    return { celsius, share: (celsius - outsideC) / span }
  })
}

/** How far a choice is from having 4 to 9 lines. */
const missedLines = ({ length }: readonly number[]): number => Math.max(4 - length, length - 9, 0)

/** Degrees in the unit shown, the usual ones first. The last few are for outer skins and furnaces. */
const STEPS: Readonly<Record<TemperatureUnit, readonly number[]>> = {
  c: [5, 2, 10, 1, 20, 0.5, 0.2, 0.1, 50, 100],
  f: [10, 5, 20, 2, 50, 1, 0.5, 0.2, 0.1, 100],
}

const toDegrees = (celsius: number, unit: TemperatureUnit): number =>
  unit === 'c' ? celsius : (celsius * 9) / 5 + 32

const toCelsius = (degrees: number, unit: TemperatureUnit): number =>
  unit === 'c' ? degrees : ((degrees - 32) * 5) / 9

/** Whole multiples of `step` between two numbers; one that is an end but for rounding is left out. */
const multiplesBetween = (from: number, to: number, step: number): readonly number[] => {
  const first = Math.floor(from / step + 1e-6) + 1
  const last = Math.ceil(to / step - 1e-6) - 1
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => (first + i) * step)
}

/** OKLab lightness at the two ends. Below it ink would not show, above it the paper would swallow it. */
const DARKEST = 0.42
const LIGHTEST = 0.955

/** Chroma and hue in degrees, OKLab, at even distances along the scale. */
const TINTS: readonly (readonly [number, number])[] = [
  [0.085, 258],
  [0.062, 250],
  [0.018, 250],
  [0.035, 70],
  [0.105, 74],
  [0.105, 84],
  [0.055, 98],
]

/** OKLab a and b on a smooth curve through the tints (Catmull-Rom), which leaves no visible kink. */
const tintAt = (share: number): readonly [number, number] => {
  const place = share * (TINTS.length - 1)
  const i = Math.min(TINTS.length - 2, Math.floor(place))
  const u = place - i
  const along = (way: (angleRad: number) => number): number => {
    const [p0, p1, p2, p3] = [i - 1, i, i + 1, i + 2].map((k) => {
      const [chroma, hueDeg] = TINTS[Math.min(TINTS.length - 1, Math.max(0, k))] ?? [0, 0]
      return chroma * way((hueDeg * Math.PI) / 180)
    }) as [number, number, number, number]
    const square = 2 * p0 - 5 * p1 + 4 * p2 - p3
    const cube = 3 * p1 - p0 - 3 * p2 + p3
    return 0.5 * (2 * p1 + (p2 - p0) * u + square * u ** 2 + cube * u ** 3)
  }
  return [along(Math.cos), along(Math.sin)]
}

/** OKLab to linear sRGB (Björn Ottosson, "A perceptual color space for image processing", 2020). */
const toLinear = (lightness: number, a: number, b: number): readonly [number, number, number] => {
  const l = (lightness + 0.3963377774 * a + 0.2158037573 * b) ** 3
  const m = (lightness - 0.1055613458 * a - 0.0638541728 * b) ** 3
  const s = (lightness - 0.0894841775 * a - 1.291485548 * b) ** 3
  return [
    4.0767416621 * l - 3.3077115913 * m + 0.2309699292 * s,
    -1.2684380046 * l + 2.6097574011 * m - 0.3413193965 * s,
    -0.0041960863 * l - 0.7034186147 * m + 1.707614701 * s,
  ]
}

/** The transfer curve of sRGB (IEC 61966-2-1), to a whole byte. */
const toByte = (linear: number): number => {
  const v = linear <= 0.0031308 ? 12.92 * linear : 1.055 * linear ** (1 / 2.4) - 0.055
  return Math.round(255 * Math.min(1, Math.max(0, v)))
}
