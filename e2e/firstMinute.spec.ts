import type { Page } from '@playwright/test'
import { bytesOf, lookAtPicture, readPdf } from './downloads.ts'
import {
  chooseFromMenu,
  downloadBy,
  expect,
  numberField,
  openSheet,
  readCounters,
  readFigures,
  setFrames,
  stageButton,
  test,
  titleBlock,
  waitUntilStill,
} from './sheet.ts'

const undo = (page: Page) => page.getByRole('button', { name: 'Undo', exact: true })

/** Drags the cursor of a slider from where it stands to another value. */
const dragSlider = async (page: Page, name: string, to: number): Promise<void> => {
  const slider = page.getByRole('slider', { name })
  await slider.scrollIntoViewIfNeeded()
  const box = await slider.boundingBox()
  const [min, max, value] = await slider.evaluate((element: HTMLInputElement) => [
    Number(element.min),
    Number(element.max),
    Number(element.value),
  ])
  if (box === null || min === undefined || max === undefined || value === undefined) {
    throw new Error(`There is no slider ${name}.`)
  }
  const placeOf = (at: number) => box.x + (box.width * (at - min)) / (max - min)
  const y = box.y + box.height / 2
  await page.mouse.move(placeOf(value), y)
  await page.mouse.down()
  await page.mouse.move(placeOf(to), y, { steps: 12 })
  await page.mouse.up()
}

test('a newcomer picks a frame, and the whole hive follows', async ({ page }) => {
  await openSheet(page)
  await waitUntilStill(page)
  const before = await readFigures(page)
  await stageButton(page, 'Frame').click()
  await page.getByRole('combobox', { name: 'Frame standard' }).selectOption({ label: 'Zander' })
  await expect.poll(() => readFigures(page)).not.toEqual(before)
  await undo(page).click()
  await expect.poll(() => readFigures(page)).toEqual(before)
})

test('20 to 26 frames, typed: every figure moves, and it is one step back', async ({ page }) => {
  await openSheet(page)
  const { frames } = await readCounters(page)
  const before = await readFigures(page)
  await setFrames(page, 26)
  await expect(page.locator('#hive-in-words')).toContainText('26 frames')
  await expect.poll(async () => (await readCounters(page)).frames).toBeGreaterThan(frames)
  const after = await readFigures(page)
  expect(figuresThatDiffer(before, after)).toEqual(expect.arrayContaining(['Hive', 'Parts']))
  await undo(page).click()
  await expect(numberField(page, 'Number of frames')).toHaveValue('20')
  await expect(undo(page)).toHaveAttribute('aria-disabled', 'true')
  await expect.poll(() => readFigures(page)).toEqual(before)
})

test('20 to 26 frames, dragged: the numbers move, and it is one step back', async ({ page }) => {
  await openSheet(page)
  await stageButton(page, 'Cavity').click()
  const before = await readFigures(page)
  await dragSlider(page, 'Number of frames, slider', 26)
  await expect(numberField(page, 'Number of frames')).toHaveValue('26')
  await expect.poll(() => readFigures(page)).not.toEqual(before)
  await undo(page).click()
  await expect(numberField(page, 'Number of frames')).toHaveValue('20')
  await expect(undo(page)).toHaveAttribute('aria-disabled', 'true')
})

test('inches and back leave the design as it was', async ({ page }) => {
  await openSheet(page)
  const before = await readFigures(page)
  await page.getByRole('button', { name: 'in, R' }).click()
  await expect(titleBlock(page)).toContainText('in')
  expect(await readFigures(page)).not.toEqual(before)
  await page.getByRole('button', { name: 'mm, RSI' }).click()
  await expect.poll(() => readFigures(page)).toEqual(before)
  await expect(undo(page)).toHaveAttribute('aria-disabled', 'true')
})

test('the hive comes apart, and the picture of it is saved', async ({ page }) => {
  await openSheet(page)
  const drawn = await waitUntilStill(page)
  await page.getByRole('button', { name: 'Take apart: Layers' }).click()
  expect(await waitUntilStill(page)).toBeGreaterThan(drawn)
  const onPaper = await downloadBy(page, () => chooseFromMenu(page, 'Export', /1920/))
  expect(onPaper.suggestedFilename()).toBe('quarry-lane-long-hive.png')
  const picture = await lookAtPicture(page, await bytesOf(onPaper))
  expect(picture).toMatchObject({ width: 1920, height: 1200, clearShare: 0 })
  expect(picture.colours).toBeGreaterThan(500)

  await page.getByRole('button', { name: 'Export', exact: true }).click()
  await page.getByRole('checkbox', { name: /Clear ground/ }).check()
  const clear = await downloadBy(page, () => page.getByRole('button', { name: /1920/ }).click())
  const cutOut = await lookAtPicture(page, await bytesOf(clear))
  expect(cutOut.clearShare).toBeGreaterThan(0.2)
  expect(cutOut.colours).toBeGreaterThan(500)
})

test('the build sheet is a PDF with the design inside', async ({ page }) => {
  await openSheet(page)
  await waitUntilStill(page)
  await chooseFromMenu(page, 'Build sheet', /PDF on A4/)
  const save = page.getByRole('button', { name: 'Save the PDF' })
  await expect(save).toBeVisible({ timeout: 60_000 })
  const pdf = await downloadBy(page, () => save.click())
  expect(pdf.suggestedFilename()).toBe('quarry-lane-long-hive-build-sheet.pdf')
  const { pages, attachments } = await readPdf(await bytesOf(pdf))
  expect(pages.length).toBeGreaterThan(4)
  expect(pages[0]).toContain('Quarry Lane long hive')
  expect(pages.join(' ')).toContain('Long wall lining')
  expect(attachments).toEqual(['design.json'])
})

test('the cut list is a table with as many pieces as the title block says', async ({ page }) => {
  await openSheet(page)
  const csv = await downloadBy(page, () => chooseFromMenu(page, 'Export', /CSV/))
  expect(csv.suggestedFilename()).toBe('quarry-lane-long-hive-cut-list.csv')
  const [head, ...rows] = (await bytesOf(csv)).toString('utf8').trimEnd().split('\r\n')
  expect(head).toMatch(/^\uFEFFPart,Pieces,Name,/)
  const pieces = rows.reduce((sum, row) => sum + Number(row.split(',')[1]), 0)
  expect(Number((await readFigures(page)).Parts)).toBe(pieces)
})

test('a part chosen in the cut list is named beside the hive', async ({ page }) => {
  await openSheet(page)
  await page.getByRole('tab', { name: 'Cut list' }).click()
  await page.getByRole('button', { name: 'Long wall lining' }).first().click()
  await expect(page.getByRole('row', { name: /Long wall lining/ }).first()).toHaveClass(/chosen/)
  await expect(page.locator('.part-caption')).toContainText('Long wall lining')
})

/** The names in the title block whose figures changed. */
const figuresThatDiffer = (before: Figures, after: Figures): readonly string[] =>
  Object.keys(after).filter((name) => after[name] !== before[name])

type Figures = Awaited<ReturnType<typeof readFigures>>
