import type { Page } from '@playwright/test'
import { expect, numberField, openSheet, setNumber, stageButton, test } from './sheet.ts'

/** The answer about the whole hive: its figure, its band, and how far the reckoning is. */
const wholeHive = (page: Page) =>
  page.locator('section.panel-answer').filter({ hasText: 'The whole hive' })

const band = (page: Page) => wholeHive(page).locator('.band')

/** The solver shares a machine with whatever else tests run on. */
const PATIENCE = { timeout: 60_000 }

const waitForFull = (page: Page): Promise<void> =>
  expect(wholeHive(page).locator('.field-state')).toHaveText('Full accuracy', PATIENCE)

const setCore = async (page: Page, mm: number): Promise<void> => {
  await stageButton(page, 'Walls').click()
  await setNumber(page, CORE, String(mm))
}

const CORE = 'Insulation thickness'

/** The two ends of the band, W/K. */
const readBand = async (page: Page): Promise<readonly [number, number]> => {
  const [low, high] = ((await band(page).textContent()) ?? '').match(/\d+\.\d+/g) ?? []
  return [Number(low), Number(high)]
}

/** Watches for the old figures being dimmed with a word about it, which may not last long. */
const noteDimming = async (page: Page): Promise<() => Promise<boolean>> => {
  const seen = await page.evaluateHandle(() => {
    const note = { isDimmed: false }
    new MutationObserver(() => {
      const old = document.querySelector('.panel-answer.old')
      if (old?.textContent?.includes('from before your last change')) note.isDimmed = true
    }).observe(document.body, { subtree: true, childList: true, attributes: true })
    return note
  })
  return () => seen.evaluate((note) => note.isDimmed)
}

test('the whole hive has a conductance with a band, which follows the design', async ({ page }) => {
  test.slow()
  await openSheet(page)
  await waitForFull(page)
  const [low, high] = await readBand(page)
  expect(low).toBeGreaterThan(0.3)
  expect(high).toBeGreaterThan(low)
  expect(high / low).toBeLessThan(1.02)

  // Thicker insulation: the old figures are dimmed until there are new ones, and those are lower.
  const wasDimmed = await noteDimming(page)
  await setCore(page, 100)
  await expect.poll(wasDimmed).toBe(true)
  await waitForFull(page)
  await expect(wholeHive(page)).not.toHaveClass(/old/)
  expect((await readBand(page))[1]).toBeLessThan(low)

  // A change that comes while the solver works takes the place of the one before it.
  await setCore(page, 40)
  await setCore(page, 80)
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('button', { name: 'Undo' }).click()
  await page.getByRole('button', { name: 'Undo' }).click()
  await waitForFull(page)
  expect(await readBand(page)).toEqual([low, high])
})

test('temperature as colour has a legend', async ({ page }) => {
  await openSheet(page)
  const toggle = page.getByRole('button', { name: 'Temperature', exact: true })
  await toggle.click()
  await expect(toggle).toHaveAttribute('aria-pressed', 'true')
  const legend = page.getByRole('region', { name: 'Temperature, what the colours mean' })
  await expect(legend).toContainText('Outside', PATIENCE)
  await expect(legend).toContainText('Inside')
  const ticks = legend.getByRole('listitem')
  expect(await ticks.count()).toBeGreaterThanOrEqual(3)
  await toggle.click()
  await expect(legend).toHaveCount(0)
})

test('the page answers at once while the solver works', async ({ page }) => {
  test.slow()
  await openSheet(page)
  await waitForFull(page)
  await setCore(page, 90)
  const pauses = await measurePauses(page)
  // The page's own thread does next to nothing meanwhile; the machine may be slow, so only what a
  // solver on this thread would do is ruled out: it would hold the page for as long as it works.
  expect(pauses.workedMs).toBeGreaterThan(0)
  expect(pauses.heldMs / pauses.workedMs).toBeLessThan(0.5)
  await expect(numberField(page, CORE)).toHaveValue('90')
})

/** While the full answer is being worked out: for how long, and how long of that the page was held. */
const measurePauses = (
  page: Page,
): Promise<{ readonly workedMs: number; readonly heldMs: number; readonly longestMs: number }> =>
  page.evaluate(async () => {
    const isWorking = () => !document.querySelector('.stage-mark.full')
    const began = performance.now()
    let heldMs = 0
    let longestMs = 0
    let before = began
    do {
      await new Promise((resolve) => setTimeout(resolve, 5))
      const now = performance.now()
      const held = now - before - 5
      if (held > 50) heldMs += held
      longestMs = Math.max(longestMs, held)
      before = now
    } while (isWorking() && before - began < 60_000)
    return { workedMs: before - began, heldMs, longestMs }
  })
