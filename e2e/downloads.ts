import { readFile } from 'node:fs/promises'
import type { Download, Page } from '@playwright/test'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'

export const bytesOf = async (download: Download): Promise<Buffer> =>
  readFile(await download.path())

export interface Picture {
  readonly width: number
  readonly height: number
  /** Different colours among every seventh pixel. */
  readonly colours: number
  /** Share of those pixels that let the ground through. */
  readonly clearShare: number
}

/** Looks at a PNG with the browser's own decoder. */
export const lookAtPicture = (page: Page, bytes: Buffer): Promise<Picture> =>
  page.evaluate(async (base64) => {
    const data = Uint8Array.from(atob(base64), (c) => c.charCodeAt(0))
    const bitmap = await createImageBitmap(new Blob([data], { type: 'image/png' }))
    const canvas = new OffscreenCanvas(bitmap.width, bitmap.height)
    const context = canvas.getContext('2d')
    if (context === null) throw new Error('No canvas to look at the picture with.')
    context.drawImage(bitmap, 0, 0)
    const pixels = new Uint32Array(
      context.getImageData(0, 0, bitmap.width, bitmap.height).data.buffer,
    )
    const seen = new Set<number>()
    let clear = 0
    let looked = 0
    for (let i = 0; i < pixels.length; i += 7) {
      const pixel = pixels[i] ?? 0
      seen.add(pixel)
      if (pixel >>> 24 === 0) clear += 1
      looked += 1
    }
    return {
      width: bitmap.width,
      height: bitmap.height,
      colours: seen.size,
      clearShare: clear / looked,
    }
  }, bytes.toString('base64'))

/** The text of each page of a PDF, and the names of the files that it carries. */
export const readPdf = async (
  bytes: Buffer,
): Promise<{ readonly pages: readonly string[]; readonly attachments: readonly string[] }> => {
  const pdf = await getDocument({ data: new Uint8Array(bytes), verbosity: 0 }).promise
  const pages: string[] = []
  for (let number = 1; number <= pdf.numPages; number += 1) {
    const content = await (await pdf.getPage(number)).getTextContent()
    pages.push(content.items.map((item) => ('str' in item ? item.str : '')).join(' '))
  }
  const attachments = Object.keys((await pdf.getAttachments()) ?? {})
  await pdf.destroy()
  return { pages, attachments }
}
