import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs'

export interface ReadPage {
  readonly widthPt: number
  readonly heightPt: number
  /** Runs of text in the order they were set; compatibility forms folded, as pdf.js changes some. */
  readonly runs: readonly string[]
  /** Runs joined by spaces. */
  readonly text: string
  /** Straight lines of one stroke each, in points, with their width. */
  readonly lines: readonly PdfLine[]
  readonly images: number
}

export interface PdfLine {
  readonly x0: number
  readonly y0: number
  readonly x1: number
  readonly y1: number
  readonly widthPt: number
}

export interface ReadPdf {
  readonly pages: readonly ReadPage[]
  readonly attachments: ReadonlyMap<string, string>
  readonly title: string
  readonly bookmarks: readonly string[]
}

type Page = Awaited<ReturnType<Awaited<ReturnType<typeof getDocument>['promise']>['getPage']>>

/** Reads a PDF with a reader that has nothing in common with the writer. */
export const readPdf = async (bytes: Uint8Array): Promise<ReadPdf> => {
  const task = getDocument({ data: bytes.slice(), verbosity: 0, isEvalSupported: false })
  const pdf = await task.promise
  const pages: ReadPage[] = []
  for (let n = 1; n <= pdf.numPages; n += 1) pages.push(await readPage(await pdf.getPage(n)))
  const files = (await pdf.getAttachments()) as Record<string, { content: Uint8Array }> | null
  const { info } = await pdf.getMetadata()
  const outline = await pdf.getOutline()
  const result = {
    pages,
    attachments: new Map(
      Object.entries(files ?? {}).map(([name, { content }]) => [
        name,
        new TextDecoder().decode(content),
      ]),
    ),
    title: String((info as { Title?: string }).Title),
    bookmarks: outline.map((o) => o.title),
  }
  await task.destroy()
  return result
}

const readPage = async (page: Page): Promise<ReadPage> => {
  const { width, height } = page.getViewport({ scale: 1 })
  const content = await page.getTextContent()
  const runs = content.items
    .map((item) => ('str' in item ? item.str.normalize('NFKC') : ''))
    .filter((s) => s.trim() !== '')
  const { fnArray, argsArray } = await page.getOperatorList()
  const lines: PdfLine[] = []
  let widthPt = 1
  fnArray.forEach((fn, i) => {
    const args = argsArray[i] as readonly unknown[]
    if (fn === OPS.setLineWidth) widthPt = Number(args[0])
    if (fn !== OPS.constructPath) return
    const [ops, at] = args as [readonly number[], readonly number[]]
    const isLine = ops.length === 2 && ops[0] === OPS.moveTo && ops[1] === OPS.lineTo
    const [x0, y0, x1, y1] = at
    if (!isLine || x0 === undefined || y0 === undefined) return
    if (x1 !== undefined && y1 !== undefined) lines.push({ x0, y0, x1, y1, widthPt })
  })
  return {
    widthPt: width,
    heightPt: height,
    runs,
    text: runs.join(' ').replace(/\s+/g, ' '),
    lines,
    images: fnArray.filter((fn) => fn === OPS.paintImageXObject).length,
  }
}
