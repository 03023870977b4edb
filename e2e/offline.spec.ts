import { bytesOf, readPdf } from './downloads.ts'
import { chooseFromMenu, downloadBy, expect, openSheet, setFrames, test } from './sheet.ts'

test('everything works without a network', async ({ page, baseURL }) => {
  const outside: string[] = []
  await page.context().route('**/*', (route) => {
    const url = route.request().url()
    const isOwn = url.startsWith(`${baseURL}/`) || /^(data|blob):/.test(url)
    if (isOwn) return route.continue()
    outside.push(url)
    return route.abort()
  })
  await openSheet(page)
  await expect(page.locator('canvas')).toBeVisible()
  await setFrames(page, 26)
  await chooseFromMenu(page, 'Build sheet', /PDF on Letter/)
  const save = page.getByRole('button', { name: 'Save the PDF' })
  await expect(save).toBeVisible({ timeout: 60_000 })
  const pdf = await downloadBy(page, () => save.click())
  expect((await readPdf(await bytesOf(pdf))).pages.length).toBeGreaterThan(4)
  expect(outside).toEqual([])
})
