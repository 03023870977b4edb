import { CAUTIONS } from '../../catalog/cautions.ts'
import type { AssemblyStep } from '../../reports/shop/assembly/assemblyReport.ts'
import { formatLength } from '../../units/length.ts'
import { type DrawingItem, LABEL_SIZE_MM, textItem } from '../drawing.ts'
import { fastenerWords } from '../shop/fastenerWords.ts'
import { LINE_SPACING } from '../type/typesetter.ts'
import { type Block, heading, paragraph, strips } from './blocks.ts'
import { flowBlocks } from './flowBlocks.ts'
import type { SheetContent, SheetPage, SheetPicture } from './sheetPage.ts'
import type { Strip } from './strip.ts'

const PICTURE_WIDTH = 88
const PICTURE_HEIGHT = 64
const GUTTER = 6
const LINE = LABEL_SIZE_MM * LINE_SPACING

/** The steps of building, each with its picture where there is one. */
export const assemblyPages = (content: SheetContent): readonly SheetPage[] => {
  const { steps } = content.report.shop.assembly
  if (steps.length === 0) return []
  const blocks: readonly Block[] = [
    heading('Assembly, step by step'),
    paragraph(
      'Lay the parts of a step out first and put them together dry. In the pictures, what comes on in ' +
        'the step is marked. Times are a guess for a careful beginner, without waiting.',
    ),
    ...steps.flatMap((step) => [
      heading(`${step.number}. ${step.title}`),
      strips(...stepStrips(content, step)),
    ]),
  ]
  return flowBlocks(blocks, content.paper.content, content.type).map((items) => ({
    title: 'Assembly',
    scale: '',
    items,
  }))
}

/**
 * The words of a step run beside its picture and on below it; the picture's strip is never parted, the
 * others go over to the next page where they must.
 */
const stepStrips = (content: SheetContent, step: AssemblyStep): readonly Strip[] => {
  const { paper, type } = content
  const area = paper.content
  const picture = content.stepPictures[step.number - 1]
  const body = { sizeMm: LABEL_SIZE_MM, weight: 'regular' } as const
  const x = picture === undefined ? area.x0 : area.x0 + PICTURE_WIDTH + GUTTER
  const width = Math.min(area.x1 - x, 190)
  const lines = stepWords(content, step).flatMap((text) =>
    type.wrap(type.clean(text).text, body, width),
  )
  const line = (text: string): Strip => ({
    heightMm: LINE,
    draw: (y) => [textItem({ x, y: y + LABEL_SIZE_MM }, text, body)],
  })
  if (picture === undefined) return lines.map(line)
  const beside = Math.floor(PICTURE_HEIGHT / LINE)
  const first: Strip = {
    heightMm: PICTURE_HEIGHT + 2,
    draw: (y) => [
      pictureItem(picture, { x: area.x0, y }),
      ...lines.slice(0, beside).flatMap((text, i) => line(text).draw(y + i * LINE)),
    ],
  }
  return [first, ...lines.slice(beside).map(line)]
}

const pictureItem = (
  picture: SheetPicture,
  at: { readonly x: number; readonly y: number },
): DrawingItem => {
  const scale = Math.min(PICTURE_WIDTH / picture.widthPx, PICTURE_HEIGHT / picture.heightPx)
  return {
    kind: 'image',
    at,
    widthMm: picture.widthPx * scale,
    heightMm: picture.heightPx * scale,
    bytes: picture.bytes,
    format: picture.kind,
  }
}

const stepWords = (
  { report, units, type }: SheetContent,
  step: AssemblyStep,
): readonly string[] => {
  const unit = units.length
  const [least, most] = step.minutes
  const { fastenings } = report.shop.fasteners
  const joints = step.fastenings.flatMap((index) => {
    const f = fastenings[index]
    if (f === undefined) return []
    return [
      `${f.joint}: ${f.count} × ${fastenerWords(f.fastener, unit)}${f.glue ? ', and glue' : ''}.`,
    ]
  })
  return [
    ...(step.rows.length === 0
      ? []
      : [`Parts: ${step.rows.map((r) => `${r.count} × ${r.label} ${r.name}`).join(', ')}.`]),
    ...step.instructions,
    ...joints,
    ...step.diagonals.map(
      (d) =>
        `Square when both diagonals are alike. ${d.name}: ${formatLength(d.lengthMm, unit, { withUnit: true })}, ` +
        `and no more than ${formatLength(d.limitMm, unit, { withUnit: true })} apart.`,
    ),
    ...(step.secondPerson === undefined ? [] : [`Two people: ${step.secondPerson}`]),
    ...CAUTIONS.filter(({ id }) => step.cautions.includes(id)).map(
      ({ text }) => `Caution: ${text}`,
    ),
    ...(most > 0 ? [`About ${least} to ${most} minutes.`] : []),
    ...(step.waitHours > 0 ? [`Then wait ${step.waitHours} hours.`] : []),
  ].map((text) => type.clean(text).text)
}
