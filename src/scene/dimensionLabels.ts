import { type Camera, Vector3 } from 'three'
import { formatLength, type LengthUnit } from '../units/length.ts'
import type { DimensionLine } from './dimensionLines.ts'
import { INK, PAPER } from './palette.ts'

/** A dimension's figure on the picture: pixels from the top left, and the turn of its line. */
export interface PlacedLabel {
  readonly text: string
  readonly x: number
  readonly y: number
  readonly angleRad: number
}

/** Places the figures on their lines, never upside down. Those behind the eye are left out. */
export const placeLabels = (
  lines: readonly DimensionLine[],
  camera: Camera,
  picture: { readonly width: number; readonly height: number; readonly unit: LengthUnit },
): readonly PlacedLabel[] =>
  lines.flatMap((line) => {
    const a = project(line.from, camera)
    const b = project(line.to, camera)
    if (a.z > 1 || b.z > 1) return []
    const [ax, ay] = [((a.x + 1) * picture.width) / 2, ((1 - a.y) * picture.height) / 2]
    const [bx, by] = [((b.x + 1) * picture.width) / 2, ((1 - b.y) * picture.height) / 2]
    const angleRad = upright(Math.atan2(by - ay, bx - ax))
    const length = formatLength(line.valueMm, picture.unit, { withUnit: true })
    const text = line.name.startsWith('inside') ? `${length} inside` : length
    return [{ text, x: (ax + bx) / 2, y: (ay + by) / 2, angleRad }]
  })

/** Turns a line's angle so that its figure reads from below or, when upright, from the right. */
const upright = (angle: number): number => {
  const steepest = Math.PI / 2 - 0.3
  if (angle > steepest) return angle - Math.PI
  return angle < steepest - Math.PI ? angle + Math.PI : angle
}

const scratch = new Vector3()
const project = (p: DimensionLine['from'], camera: Camera): { x: number; y: number; z: number } => {
  scratch.set(p.x, p.y, p.z).project(camera)
  return { x: scratch.x, y: scratch.y, z: scratch.z }
}

const LABEL_FONT = '"IBM Plex Sans", system-ui, sans-serif'
const LABEL_PX = 16
/** Figures stand over their line, as ISO 129-1 has it. */
const RAISE_PX = 11

/** Keeps one element for each figure in `layer`, an overlay of the same size as the canvas. */
export const writeLabels = (layer: HTMLElement, labels: readonly PlacedLabel[]): void => {
  while (layer.children.length > labels.length) layer.lastElementChild?.remove()
  while (layer.children.length < labels.length) layer.append(createLabel())
  labels.forEach((label, i) => {
    const element = layer.children[i]
    if (!(element instanceof HTMLElement)) return
    if (element.textContent !== label.text) element.textContent = label.text
    const turn = `${((label.angleRad * 180) / Math.PI).toFixed(2)}deg`
    element.style.transform = `translate(${label.x.toFixed(1)}px, ${label.y.toFixed(1)}px) translate(-50%, -50%) rotate(${turn}) translateY(${-RAISE_PX}px)`
  })
}

/** Paper round the letters, so that they read over wood and shadow. */
const HALO = [1, 2, 3, 4].map((blur) => `0 0 ${blur}px ${PAPER}`).join(', ')

const createLabel = (): HTMLElement => {
  const element = document.createElement('span')
  Object.assign(element.style, {
    position: 'absolute',
    left: '0',
    top: '0',
    padding: '0 5px',
    font: `500 ${LABEL_PX}px/1.2 ${LABEL_FONT}`,
    fontVariantNumeric: 'tabular-nums',
    whiteSpace: 'nowrap',
    color: INK,
    textShadow: HALO,
    willChange: 'transform',
  })
  return element
}

/** Draws the same figures into a picture; `scale` is picture pixels for one screen pixel. */
export const paintLabels = (
  context: CanvasRenderingContext2D,
  labels: readonly PlacedLabel[],
  scale: number,
): void => {
  context.font = `500 ${LABEL_PX * scale}px ${LABEL_FONT}`
  context.textAlign = 'center'
  context.textBaseline = 'middle'
  context.lineJoin = 'round'
  context.lineWidth = 4 * scale
  context.strokeStyle = PAPER
  context.fillStyle = INK
  for (const label of labels) {
    context.save()
    context.translate(label.x, label.y)
    context.rotate(label.angleRad)
    context.strokeText(label.text, 0, -RAISE_PX * scale)
    context.fillText(label.text, 0, -RAISE_PX * scale)
    context.restore()
  }
}
