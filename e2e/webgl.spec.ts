import {
  chooseFromMenu,
  expect,
  openSheet,
  readCounters,
  readFigures,
  setFrames,
  test,
  waitUntilStill,
} from './sheet.ts'

test('without WebGL a drawing stands in, and the rest works', async ({ page }) => {
  await page.addInitScript(() => {
    const own = HTMLCanvasElement.prototype.getContext
    const without = function (this: HTMLCanvasElement, kind: string, options?: unknown) {
      return kind.startsWith('webgl') ? null : Reflect.apply(own, this, [kind, options])
    }
    Object.assign(HTMLCanvasElement.prototype, { getContext: without })
  })
  await openSheet(page)
  const drawing = page.locator('.flat-hive img, .flat-hive svg')
  await expect(drawing).toBeVisible()
  await expect(page.locator('canvas')).toHaveCount(0)
  const { Parts } = await readFigures(page)
  const source = await drawing.evaluate(
    (element) => element.getAttribute('src') ?? element.innerHTML,
  )
  await setFrames(page, 26)
  await expect.poll(async () => (await readFigures(page)).Parts).not.toBe(Parts)
  await expect
    .poll(() => drawing.evaluate((element) => element.getAttribute('src') ?? element.innerHTML))
    .not.toBe(source)
  await expect(drawing).toHaveAttribute('alt', 'The hive cut across')
  await page.getByText('Lift a frame, cut it open').click()
  await page.getByText('Along', { exact: true }).click()
  await expect(drawing).toHaveAttribute('alt', 'The hive cut along its length')
  await chooseFromMenu(page, 'Build sheet', /PDF on A4/)
  await expect(page.getByRole('button', { name: 'Save the PDF' })).toBeVisible({ timeout: 60_000 })
})

test.describe('a lost context', () => {
  // Losing the context is what this test does; browser and library say so.
  test.use({ tolerated: /CONTEXT_LOST_WEBGL|Context Lost|WEBGL_lose_context/ })

  test('leaves a drawing and a button that brings the view back', async ({ page }) => {
    await openSheet(page)
    await waitUntilStill(page)
    await page.locator('canvas').evaluate((canvas: HTMLCanvasElement) => {
      canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context')?.loseContext()
    })
    const restore = page.getByRole('button', { name: /Restore the 3D view/ })
    await expect(restore).toBeVisible()
    await expect(page.locator('.flat-hive')).toBeVisible()
    await setFrames(page, 22)
    await expect(page.locator('#hive-in-words')).toContainText('22 frames')
    await restore.click()
    expect((await readCounters(page)).calls).toBeGreaterThan(0)
    await expect(restore).toHaveCount(0)
  })
})
