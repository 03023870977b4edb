import { encodeBase64 } from './base64.ts'
import {
  type ColourItem,
  DASH_MM,
  type Drawing,
  type DrawingItem,
  LINE_WIDTH_MM,
  PALE_GREY,
  type PaperPoint,
  type PolygonItem,
  type Stroke,
  type TextItem,
  TINT_GREY,
} from './drawing.ts'
import { hatchSegments } from './hatchSegments.ts'

/**
 * A drawing as one SVG document, true to size in millimetres when printed at 100 %. Ink is
 * `currentColor` and paper is left open, so a page may colour both. Tags become `data-tag`. Text is
 * escaped; characters that XML can't hold are left out.
 */
export const drawingToSvg = (drawing: Drawing): string => {
  const [w, h] = [round(drawing.widthMm), round(drawing.heightMm)]
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${w}mm" height="${h}mm" viewBox="0 0 ${w} ${h}"` +
      ' fill="none" stroke-linecap="round" stroke-linejoin="round"' +
      ` font-family="'IBM Plex Sans', sans-serif">`,
    ...drawing.items.map(writeItem),
    '</svg>',
  ].join('\n')
}

/** A thousandth of a millimetre is finer than any printer. */
const round = (mm: number): number => {
  const r = Math.round(mm * 1000) / 1000
  return r === 0 ? 0 : r
}

const point = (p: PaperPoint): string => `${round(p.x)},${round(p.y)}`

const writeItem = (item: DrawingItem): string => {
  switch (item.kind) {
    case 'line':
      return `<path d="M${point(item.from)}L${point(item.to)}"${strokeOf(item)}${tagOf(item.tag)}/>`
    case 'polyline': {
      const [first, ...rest] = item.points
      if (first === undefined) return ''
      const d = `M${point(first)}${rest.map((p) => `L${point(p)}`).join('')}`
      return `<path d="${d}"${strokeOf(item)}${tagOf(item.tag)}/>`
    }
    case 'polygon':
      return writePolygon(item)
    case 'colour':
      return writeColour(item)
    case 'text':
      return writeText(item)
    case 'image':
      return (
        `<image x="${round(item.at.x)}" y="${round(item.at.y)}" width="${round(item.widthMm)}"` +
        ` height="${round(item.heightMm)}" href="data:image/${item.format};base64,` +
        `${encodeBase64(item.bytes)}"/>`
      )
  }
}

const strokeOf = ({ weight, dash, tone }: Stroke): string => {
  const dashes = DASH_MM[dash].length > 0 ? ` stroke-dasharray="${DASH_MM[dash].join(' ')}"` : ''
  const pale = tone === 'pale' ? ` stroke-opacity="${1 - PALE_GREY}"` : ''
  return ` stroke="currentColor" stroke-width="${LINE_WIDTH_MM[weight]}"${pale}${dashes}`
}

const tagOf = (tag: string | undefined): string =>
  tag === undefined ? '' : ` data-tag="${escapeXml(tag)}"`

const writePolygon = (item: PolygonItem): string => {
  const stroke = item.stroke ? strokeOf(item.stroke) : ''
  // Ink at part strength over the paper: black on white gives exactly the grey of the tint.
  const fill =
    item.tint === 'none'
      ? ''
      : item.tint === 'paper'
        ? ' fill="var(--paper, #fff)"'
        : ` fill="currentColor" fill-opacity="${round(1 - TINT_GREY[item.tint])}"`
  const lines = hatchSegments(item.points, item.hatch)
    .map((s) => `M${point(s.from)}L${point(s.to)}`)
    .join('')
  const hatch =
    lines === ''
      ? ''
      : `<path d="${lines}"${strokeOf({ weight: 'thin', dash: 'solid' })} pointer-events="none"/>`
  const polygon = `<polygon points="${item.points.map(point).join(' ')}"${fill}${stroke}${tagOf(item.tag)}/>`
  return polygon + hatch
}

const writeColour = ({ loops, colour: { r, g, b }, tag }: ColourItem): string => {
  const d = loops.map((loop) => `M${loop.map(point).join('L')}Z`).join('')
  return `<path d="${d}" fill="rgb(${r},${g},${b})"${tagOf(tag)}/>`
}

const writeText = (item: TextItem): string => {
  const { x, y } = item.at
  const turn = item.angleDeg === 0 ? '' : ` transform="rotate(${-item.angleDeg} ${point(item.at)})"`
  const weight = item.weight === 'semibold' ? ' font-weight="600"' : ''
  return (
    `<text x="${round(x)}" y="${round(y)}" font-size="${round(item.sizeMm)}" fill="currentColor"` +
    ` text-anchor="${item.anchor}"${weight}${turn}${tagOf(item.tag)}>${escapeXml(item.text)}</text>`
  )
}

/** Escapes for text and attributes; drops what XML 1.0 forbids (most controls, lone surrogates). */
const escapeXml = (text: string): string =>
  [...text]
    .filter((c) => {
      const code = c.codePointAt(0) ?? 0
      const isControl = code < 0x20 && code !== 9 && code !== 10 && code !== 13
      const isSurrogate = code >= 0xd800 && code <= 0xdfff
      return !isControl && !isSurrogate && code !== 0xfffe && code !== 0xffff
    })
    .map((c) => ESCAPES[c] ?? c)
    .join('')

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}
