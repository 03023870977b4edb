import { type DrawingItem, LABEL_SIZE_MM, solidLine, textItem } from '../drawing.ts'
import { LINE_SPACING } from '../type/typesetter.ts'
import { placeDrawing } from '../view.ts'
import { pictorialView } from '../views/pictorialView.ts'
import { heading, paragraph } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import { mainFigures } from './mainFigures.ts'
import type { PaperBox } from './paper.ts'
import type { SheetContent, SheetPage } from './sheetPage.ts'

const BODY = { sizeMm: LABEL_SIZE_MM, weight: 'regular' } as const
const LINE = LABEL_SIZE_MM * LINE_SPACING
const FIGURES_WIDTH = 86
const GUTTER = 8
/** A longer note gets a page of its own. */
const NOTE_LINES = 6

/**
 * The first sheet: name, picture (or a line drawing), main figures and the note; with a second page when
 * the note is long. Says how many characters of the user's words could not be printed.
 */
export const titlePages = (content: SheetContent): readonly SheetPage[] => {
  const { design, paper, type } = content
  const box = paper.content
  const name = type.clean(design.title.name)
  const owner = type.clean(design.title.owner)
  const note = type.clean(design.title.note.trim().replace(/\n{3,}/g, '\n\n'))
  const title = headline(content, name.text, owner.text)
  const left: PaperBox = { ...box, x1: box.x1 - FIGURES_WIDTH - GUTTER, y0: title.bottom }
  const noteLines = type.wrap(note.text, BODY, left.x1 - left.x0)
  const isShort = noteLines.length <= NOTE_LINES
  const below = [
    ...missingLines({ name: name.missing, builder: owner.missing, note: note.missing }),
    ...(note.text === '' ? [] : isShort ? noteLines : ['The note has a sheet of its own.']),
  ].flatMap((line) => type.wrap(line, BODY, left.x1 - left.x0))
  const noteTop = left.y1 - below.length * LINE
  const first: SheetPage = {
    title: 'Build sheet',
    scale: '',
    items: [
      ...title.items,
      ...pictureItems(content, { ...left, y1: noteTop - 2 }),
      ...below.map((line, i) =>
        textItem({ x: left.x0, y: noteTop + LABEL_SIZE_MM + i * LINE }, line, BODY),
      ),
      ...figureItems(content, { ...box, x0: box.x1 - FIGURES_WIDTH, y0: title.bottom }),
      ...adviceItems(content),
    ],
  }
  if (isShort) return [first]
  const blocks = [heading('Note'), paragraph(note.text)]
  return [
    first,
    ...flowBlocks(blocks, box, type).map((items) => ({ title: 'Note', scale: '', items })),
  ]
}

/** The name in large type over the page, and under it whose it is. */
const headline = ({ paper, type, date }: SheetContent, name: string, owner: string) => {
  const box = paper.content
  const width = box.x1 - box.x0
  const fitted = type.fit(flat(name) || 'Hive without a name', 'semibold', {
    widthMm: width,
    heightMm: 20,
    sizesMm: [10, 8, 6.5, 5, 4],
  })
  const step = fitted.sizeMm * LINE_SPACING
  const under = type.wrap(
    flat([owner, type.clean(date).text].filter((t) => t !== '').join(', ')),
    BODY,
    width,
  )
  const underTop = box.y0 + (fitted.lines.length - 1) * step + fitted.sizeMm + 2.5
  const items: readonly DrawingItem[] = [
    ...fitted.lines.map((line, i) =>
      textItem({ x: box.x0, y: box.y0 + fitted.sizeMm * 0.8 + i * step }, line, {
        sizeMm: fitted.sizeMm,
        weight: 'semibold',
      }),
    ),
    ...under.map((line, i) =>
      textItem({ x: box.x0, y: underTop + LABEL_SIZE_MM * 0.8 + i * LINE }, line, BODY),
    ),
  ]
  return { items, bottom: underTop + under.length * LINE + 3 }
}

const flat = (text: string): string => text.replace(/\s+/g, ' ').trim()

/** One plain sentence for each text of the user's that the typeface can't set in full. */
const missingLines = (missing: Readonly<Record<string, number>>): readonly string[] =>
  Object.entries(missing)
    .filter(([, count]) => count > 0)
    .map(
      ([what, count]) =>
        `${count} ${count === 1 ? 'character' : 'characters'} of the ${what} ` +
        `${count === 1 ? 'is' : 'are'} not in the printed typeface; each is shown as “?”.`,
    )

const pictureItems = ({ hive, picture }: SheetContent, box: PaperBox): readonly DrawingItem[] => {
  const area = { widthMm: box.x1 - box.x0, heightMm: box.y1 - box.y0 }
  if (picture === undefined)
    return placeDrawing(pictorialView(hive, area), { x: box.x0, y: box.y0 })
  const scale = Math.min(area.widthMm / picture.widthPx, area.heightMm / picture.heightPx)
  const [widthMm, heightMm] = [picture.widthPx * scale, picture.heightPx * scale]
  return [
    {
      kind: 'image',
      at: {
        x: box.x0 + (area.widthMm - widthMm) / 2,
        y: box.y0 + (area.heightMm - heightMm) / 2,
      },
      widthMm,
      heightMm,
      bytes: picture.bytes,
      format: picture.kind,
    },
  ]
}

const figureItems = (
  { design, hive, report, units, type }: SheetContent,
  box: PaperBox,
): readonly DrawingItem[] => {
  const figures = mainFigures(design, hive, report, units)
  const step = Math.min(14, (box.y1 - box.y0) / figures.length)
  return figures.flatMap(({ caption, value }, i) => {
    const y = box.y0 + i * step
    const fitted = type.fit(value, 'semibold', {
      widthMm: box.x1 - box.x0,
      heightMm: 7,
      sizesMm: [5, 4.6, 4.2, LABEL_SIZE_MM],
    })
    return [
      solidLine('thin', { x: box.x0, y }, { x: box.x1, y }),
      textItem({ x: box.x0, y: y + 4.4 }, caption, BODY),
      ...fitted.lines.map((line, k) =>
        textItem({ x: box.x0, y: y + 10 + k * fitted.sizeMm * LINE_SPACING }, line, {
          sizeMm: fitted.sizeMm,
          weight: 'semibold',
        }),
      ),
    ]
  })
}

const ADVICE =
  'A planner worked this out; no engineer has certified it. Measure your own frames, boards and ' +
  'sheets before you cut, and read the cautions on the last sheets first.'

const adviceItems = ({ paper: { foot }, type }: SheetContent): readonly DrawingItem[] =>
  type
    .wrap(ADVICE, BODY, foot.x1 - foot.x0)
    .map((line, i) => textItem({ x: foot.x0, y: foot.y0 + 6 + i * LINE }, line, BODY))
