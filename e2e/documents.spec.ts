import { writeFileSync } from 'node:fs'
import type { Page } from '@playwright/test'
import {
  downloadBy,
  expect,
  numberField,
  openSheet,
  readFigures,
  setFrames,
  setNumber,
  stageButton,
  test,
} from './sheet.ts'

const nameField = (page: Page) => page.getByRole('textbox', { name: 'Name of the hive' })

const notice = (page: Page) => page.locator('.notice')

const rename = async (page: Page, name: string): Promise<void> => {
  await nameField(page).fill(name)
  await page.keyboard.press('Enter')
}

/** Opens a file as the file picker would. */
const openFile = async (page: Page, name: string, content: string | Buffer): Promise<void> => {
  const path = test.info().outputPath(name)
  writeFileSync(path, content)
  await page.locator('header input[type=file]').setInputFiles(path)
}

const readLink = async (page: Page): Promise<string> => {
  await page.getByRole('button', { name: 'Link', exact: true }).click()
  const link = await page.getByRole('textbox', { name: 'Link' }).inputValue()
  await page.getByRole('button', { name: 'Close' }).click()
  return link
}

test('a link holds the whole design and asks before it takes the place of another', async ({
  page,
  browser,
}) => {
  await openSheet(page)
  await setFrames(page, 26)
  await rename(page, 'Hive of the link')
  const link = await readLink(page)
  const figures = await readFigures(page)

  // Whoever has done nothing yet sees it at once.
  const other = await (await browser.newContext()).newPage()
  await other.goto(link)
  await expect(nameField(other)).toHaveValue('Hive of the link')
  await expect.poll(() => readFigures(other)).toEqual(figures)
  expect(new URL(other.url()).hash).toBe('')
  await other.close()

  // Whoever has a design of their own is asked.
  await page.getByRole('button', { name: 'Undo' }).click()
  await rename(page, 'My own hive')
  await setFrames(page, 12)
  const own = await readFigures(page)
  await page.goto(link)
  await expect(page.getByRole('dialog')).toContainText('Hive of the link')
  expect(await readFigures(page)).toEqual(own)
  await page.getByRole('button', { name: 'Keep mine' }).click()
  await expect(nameField(page)).toHaveValue('My own hive')

  await page.goto(link)
  await page.getByRole('button', { name: 'Open it' }).click()
  await expect(nameField(page)).toHaveValue('Hive of the link')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(nameField(page)).toHaveValue('My own hive')
  expect(await readFigures(page)).toEqual(own)
})

test('a damaged link says so and changes nothing', async ({ page }) => {
  await openSheet(page)
  await setFrames(page, 24)
  const link = await readLink(page)
  const before = await readFigures(page)
  await page.goto(`${link.slice(0, -6)}AAAAAA`)
  await expect(notice(page)).toContainText(/link/i)
  await expect(notice(page)).toContainText('unchanged')
  expect(await readFigures(page)).toEqual(before)
})

const BAD_FILES = [
  { name: 'broken.json', content: '{"combwright": 1, "cavity": {"frames": 2', says: /cut short/ },
  {
    name: 'foreign.json',
    content: '{"kind": "shopping", "items": []}',
    says: /not a Combwright design/,
  },
  {
    name: 'picture.json',
    content: Buffer.from([137, 80, 78, 71, 0, 1, 2, 3]),
    says: /not a Combwright design/,
  },
  { name: 'future.json', content: '{"combwright": 99}', says: /newer Combwright/ },
  {
    name: 'wrong.json',
    content: '{"combwright": 1, "cavity": {"frames": "many"}}',
    says: /Number of frames/,
  },
  { name: 'huge.json', content: Buffer.alloc(50_000_000, ' '), says: /50 MB/ },
] as const

test('files that are no design say why and leave the design untouched', async ({ page }) => {
  await openSheet(page)
  await setFrames(page, 23)
  await rename(page, 'Keep this one')
  const before = await readFigures(page)
  for (const { name, content, says } of BAD_FILES) {
    await openFile(page, name, content)
    await expect(notice(page), name).toContainText(says)
    await expect(notice(page)).toHaveCount(1)
    await expect(notice(page)).toContainText('unchanged')
    expect(await readFigures(page), name).toEqual(before)
    await notice(page).getByRole('button').click()
    await expect(notice(page)).toHaveCount(0)
  }
  await expect(numberField(page, 'Number of frames')).toHaveValue('23')
})

test('a saved design opens again just as it was', async ({ page }) => {
  await openSheet(page)
  await setFrames(page, 25)
  await rename(page, 'Saved hive')
  const figures = await readFigures(page)
  const file = await downloadBy(page, () =>
    page.getByRole('button', { name: 'Save', exact: true }).click(),
  )
  expect(file.suggestedFilename()).toBe('saved-hive.json')
  await setFrames(page, 10)
  await page.locator('header input[type=file]').setInputFiles(await file.path())
  await page.getByRole('button', { name: 'Open it' }).click()
  await expect.poll(() => readFigures(page)).toEqual(figures)
})

test('the design is still there after the page is loaded again', async ({ page }) => {
  await openSheet(page)
  await setFrames(page, 22)
  await rename(page, 'Kept hive')
  await page.getByRole('button', { name: 'in, R' }).click()
  const figures = await readFigures(page)
  await page.reload()
  await expect(nameField(page)).toHaveValue('Kept hive')
  await expect.poll(() => readFigures(page)).toEqual(figures)
})

test('a design that cannot be built keeps the last hive in sight and says what to change', async ({
  page,
}) => {
  await openSheet(page)
  const parts = (await readFigures(page)).Parts
  await stageButton(page, 'Walls').click()
  await setNumber(page, 'Insulation thickness', '10')
  await expect(page.getByText('The last hive that can be built')).toBeVisible()
  await expect(page.getByText(/Make the wall's insulation at least/).first()).toBeVisible()
  expect((await readFigures(page)).Parts).toBe(parts)
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect(page.getByText('The last hive that can be built')).toHaveCount(0)
})

test('an example opens as one step that can be undone', async ({ page }) => {
  await openSheet(page)
  const before = await readFigures(page)
  await page.getByRole('button', { name: 'Examples' }).click()
  await page.getByRole('button', { name: /Two-colony school hive/ }).click()
  await expect(nameField(page)).toHaveValue('Two-colony school hive')
  await page.getByRole('button', { name: 'Undo' }).click()
  await expect.poll(() => readFigures(page)).toEqual(before)
})
