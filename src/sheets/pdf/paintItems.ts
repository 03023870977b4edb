import {
  type ColourItem,
  DASH_MM,
  type DrawingItem,
  LINE_WIDTH_MM,
  PALE_GREY,
  type PaperPoint,
  type PolygonItem,
  type Stroke,
  type TextItem,
  TINT_GREY,
} from '../drawing.ts'
import { hatchSegments } from '../hatchSegments.ts'

/** Points (1/72 in) in a millimetre. */
export const PT_PER_MM = 72 / 25.4

type Pdf = PDFKit.PDFDocument

/**
 * Draws items on the document's present page, black on white. Text must already be free of characters
 * that the fonts `regular` and `semibold` lack.
 */
export const paintItems = (pdf: Pdf, items: readonly DrawingItem[]): void => {
  pdf.lineCap('round').lineJoin('round')
  for (const item of items) paintItem(pdf, item)
}

const pt = (mm: number): number => mm * PT_PER_MM

const paintItem = (pdf: Pdf, item: DrawingItem): void => {
  switch (item.kind) {
    case 'line':
      strokePath(pdf, [item.from, item.to], item)
      break
    case 'polyline':
      strokePath(pdf, item.points, item)
      break
    case 'polygon':
      paintPolygon(pdf, item)
      break
    case 'colour':
      paintColour(pdf, item)
      break
    case 'text':
      paintText(pdf, item)
      break
    case 'image':
      // pdfkit knows the kind of picture by its first bytes.
      pdf.image(item.bytes.slice().buffer, pt(item.at.x), pt(item.at.y), {
        width: pt(item.widthMm),
        height: pt(item.heightMm),
      })
  }
}

const paintPolygon = (pdf: Pdf, { points, tint, hatch, stroke }: PolygonItem): void => {
  if (tint !== 'none') {
    tracePath(pdf, points)
    const grey = Math.round(255 * TINT_GREY[tint])
    pdf.closePath().fill([grey, grey, grey])
  }
  const lines = hatchSegments(points, hatch)
  if (lines.length > 0) {
    setStroke(pdf, { weight: 'thin', dash: 'solid' })
    for (const s of lines) tracePath(pdf, [s.from, s.to])
    pdf.stroke()
  }
  if (stroke) {
    setStroke(pdf, stroke)
    tracePath(pdf, points)
    pdf.closePath().stroke()
  }
}

/** All loops as one path, so that no seam shows between them; holes run the other way round. */
const paintColour = (pdf: Pdf, { loops, colour: { r, g, b } }: ColourItem): void => {
  for (const loop of loops) {
    tracePath(pdf, loop, shortPt)
    pdf.closePath()
  }
  if (loops.length > 0) pdf.fill([r, g, b])
}

const setStroke = (pdf: Pdf, { weight, dash, tone }: Stroke): void => {
  const grey = Math.round(255 * (tone === 'pale' ? PALE_GREY : 0))
  pdf.lineWidth(pt(LINE_WIDTH_MM[weight])).strokeColor([grey, grey, grey])
  const lengths = DASH_MM[dash].map(pt)
  // An empty pattern is a whole line; pdfkit's own `undash` writes the same operator.
  pdf.addContent(`[${lengths.map((l) => l.toFixed(3)).join(' ')}] 0 d`)
}

/** Curves have many points: to a hundredth of a point they are true enough, and the file is small. */
const shortPt = (mm: number): number => Math.round(pt(mm) * 100) / 100

const tracePath = (pdf: Pdf, points: readonly PaperPoint[], place = pt): void => {
  points.forEach((p, i) => {
    if (i === 0) pdf.moveTo(place(p.x), place(p.y))
    else pdf.lineTo(place(p.x), place(p.y))
  })
}

const strokePath = (pdf: Pdf, points: readonly PaperPoint[], stroke: Stroke): void => {
  setStroke(pdf, stroke)
  tracePath(pdf, points, points.length > 2 ? shortPt : pt)
  pdf.stroke()
}

const paintText = (pdf: Pdf, item: TextItem): void => {
  if (item.text === '') return
  pdf.font(item.weight).fontSize(pt(item.sizeMm)).fillColor('black')
  const [x, y] = [pt(item.at.x), pt(item.at.y)]
  const width = pdf.widthOfString(item.text)
  const start = item.anchor === 'start' ? x : item.anchor === 'middle' ? x - width / 2 : x - width
  const isTurned = item.angleDeg !== 0
  if (isTurned) pdf.save().rotate(-item.angleDeg, { origin: [x, y] })
  pdf.text(item.text, start, y, { lineBreak: false, baseline: 'alphabetic' })
  if (isTurned) pdf.restore()
}
