import PDFDocument from 'pdfkit'
import { formatDesign } from '../../design/formatDesign.ts'
import type { Design } from '../../design/schema.ts'
import type { Hive } from '../../hive/hive.ts'
import type { HeatComparisons } from '../../reports/heat/field/heatComparisons.ts'
import type { WholeReport } from '../../reports/wholeReport.ts'
import type { UnitPreferences } from '../../units/preferences.ts'
import { SHEET_CHAPTERS } from '../pages/chapters.ts'
import { pageFrame } from '../pages/pageFrame.ts'
import { type PaperName, paperOf } from '../pages/paper.ts'
import type { SheetContent, SheetPage, SheetPicture } from '../pages/sheetPage.ts'
import { readFontMetrics } from '../type/fontMetrics.ts'
import { createTypesetter } from '../type/typesetter.ts'
import { PT_PER_MM, paintItems } from './paintItems.ts'

export interface BuildSheetInput {
  readonly design: Design
  readonly hive: Hive
  readonly report: WholeReport
  readonly units: UnitPreferences
  readonly paper: PaperName
  /** As it is to be printed; `2031-04-09` also dates the file. */
  readonly date: string
  /** A picture for the first sheet; without one the hive is drawn in lines. */
  readonly picture?: SheetPicture
  /** Pictures of the steps of assembly, by their order. */
  readonly stepPictures?: readonly (SheetPicture | undefined)[]
  /** Remedies and baselines of this very hive; shown when the report has its field. */
  readonly comparisons?: HeatComparisons
  /** TrueType files of the two weights. */
  readonly fonts: { readonly regular: Uint8Array; readonly semibold: Uint8Array }
}

export interface SheetProgress {
  readonly done: number
  readonly total: number
}

/** The message of the error that an aborted sheet is rejected with. */
export const SHEET_ABORTED = 'The build sheet was cancelled.'

/** The name under which the design lies inside the PDF. */
export const ATTACHED_DESIGN = 'design.json'

/**
 * The whole build sheet as a PDF: drawings as vectors at true scale, lists and cautions, and the design
 * itself attached, so that the file can be opened again. The same input gives the same bytes. After each
 * step `onProgress` is told and waited for, which lets its caller give way to other work; then `signal`
 * is looked at, and the promise is rejected with `SHEET_ABORTED` if it asks for that.
 */
export const buildSheetPdf = async (
  input: BuildSheetInput,
  onProgress: (progress: SheetProgress) => void | Promise<void> = () => {},
  signal: { readonly aborted: boolean } = { aborted: false },
): Promise<Uint8Array> => {
  const content = readInput(input)
  const total = 2 * SHEET_CHAPTERS.length
  const step = async (done: number) => {
    await onProgress({ done, total })
    if (signal.aborted) throw new Error(SHEET_ABORTED)
  }
  await step(0)
  const chapters: (readonly SheetPage[])[] = []
  for (const compose of SHEET_CHAPTERS) {
    chapters.push(compose(content))
    await step(chapters.length)
  }
  const pdf = openDocument(input)
  const bytes = collect(pdf)
  const count = chapters.flat().length
  let number = 0
  for (const [i, pages] of chapters.entries()) {
    for (const page of pages) {
      number += 1
      addPage(pdf, page, content, { number, count })
    }
    await step(SHEET_CHAPTERS.length + i + 1)
  }
  attachDesign(pdf, input.design)
  pdf.end()
  return bytes
}

const readInput = ({
  fonts,
  picture,
  comparisons,
  stepPictures = [],
  paper,
  ...rest
}: BuildSheetInput): SheetContent => ({
  ...rest,
  picture,
  comparisons,
  stepPictures,
  paper: paperOf(paper),
  type: createTypesetter({
    regular: readFontMetrics(fonts.regular),
    semibold: readFontMetrics(fonts.semibold),
  }),
})

const openDocument = (input: BuildSheetInput): PDFKit.PDFDocument => {
  const { widthMm, heightMm } = paperOf(input.paper).size
  const pdf = new PDFDocument({
    size: [widthMm * PT_PER_MM, heightMm * PT_PER_MM],
    margin: 0,
    autoFirstPage: false,
    pdfVersion: '1.7',
    lang: 'en',
    displayTitle: true,
    // No standard font: only the two given ones are used, and the browser has no other.
    font: '',
    info: {
      Title: `${input.design.title.name}: build sheet`,
      Author: input.design.title.owner,
      Creator: 'Combwright',
      CreationDate: dateOf(input.date),
    },
  })
  pdf.registerFont('regular', input.fonts.regular)
  pdf.registerFont('semibold', input.fonts.semibold)
  return pdf
}

/** The given day at midnight, or a fixed day when it is written in another way. */
const dateOf = (text: string) => {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text) ?? []
  // biome-ignore lint/style/noRestrictedGlobals: made from the given day, not from a clock
  return new Date(Date.UTC(Number(year ?? 2000), Number(month ?? 1) - 1, Number(day ?? 1)))
}

const addPage = (
  pdf: PDFKit.PDFDocument,
  page: SheetPage,
  content: SheetContent,
  place: { readonly number: number; readonly count: number },
): void => {
  pdf.addPage()
  paintItems(pdf, [...page.items, ...pageFrame(page, content, place)])
  pdf.outline.addItem(`${place.number}  ${page.title}`)
}

const attachDesign = (pdf: PDFKit.PDFDocument, design: Design): void => {
  // @types/pdfkit 0.17 does not know `relationship`, which pdfkit 0.20 writes.
  const options: PDFKit.Mixins.PDFAttachmentOptions & { relationship: string } = {
    name: ATTACHED_DESIGN,
    type: 'application/json',
    description: 'The design of this hive. Drop the PDF on the planner to open it again.',
    relationship: 'Source',
  }
  pdf.file(new TextEncoder().encode(formatDesign(design)).slice().buffer, options)
}

const collect = (pdf: PDFKit.PDFDocument): Promise<Uint8Array> =>
  new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = []
    pdf.on('data', (chunk: Uint8Array) => chunks.push(chunk))
    pdf.on('error', reject)
    pdf.on('end', () => {
      const bytes = new Uint8Array(chunks.reduce((sum, c) => sum + c.length, 0))
      let at = 0
      for (const chunk of chunks) {
        bytes.set(chunk, at)
        at += chunk.length
      }
      resolve(bytes)
    })
  })
