import { expect, openSheet, test } from './sheet.ts'

test('from the plan to the bench: proven, ticked, priced, and put together', async ({ page }) => {
  await openSheet(page)
  await page.getByRole('tab', { name: 'Workshop' }).click()
  const answers = page.getByRole('region', { name: 'Answers' })
  await expect(answers).toContainText(/\d+ parts to cut, \d+ set-ups, \d+ tools/)

  // A plan that is proven, drawn; a piece of it is the piece in the cut list.
  await answers.getByRole('button', { name: /^Boards/ }).click()
  const bench = page.getByRole('dialog', { name: 'The bench' })
  await expect(bench.getByText('Proven cheapest').first()).toBeVisible()
  const piece = bench.locator('.row-button').first()
  await piece.click()
  await expect(piece).toHaveAttribute('aria-pressed', 'true')
  await expect(bench.getByRole('button', { name: 'See it in the hive' })).toBeVisible()

  // A card keeps its tick when the page is opened again.
  await bench.getByRole('tab', { name: 'Set-ups' }).click()
  const circle = bench.locator('.set-up').first().locator('.tick').first()
  await circle.click()
  await expect(circle).toHaveAttribute('aria-pressed', 'true')
  expect(await page.evaluate(() => localStorage.getItem('combwright.ticks'))).toMatch(/:1/)

  // An own price changes the total, and is one step to undo.
  await bench.getByRole('tab', { name: 'Shopping' }).click()
  const total = bench.getByRole('region', { name: 'Total' }).locator('.big-figure')
  const before = (await total.textContent()) ?? ''
  const price = bench.getByRole('textbox', { name: /^Price of one/ }).last()
  await price.fill('999')
  await price.press('Enter')
  await expect(total).not.toHaveText(before)
  await page.getByRole('button', { name: 'Undo', exact: true }).click()
  await expect(total).toHaveText(before)

  await page.keyboard.press('Escape')
  await expect(bench).toBeHidden()

  // Step by step, by button and by key.
  await answers.getByRole('button', { name: /Put it together/ }).click()
  const step = answers.getByRole('heading', { name: /^Step/ })
  await expect(step).toContainText('Step 1 of')
  await answers.getByRole('button', { name: 'Next' }).click()
  await expect(step).toContainText('Step 2 of')
  await page.keyboard.press('ArrowRight')
  await expect(step).toContainText('Step 3 of')
  await page.keyboard.press('Escape')
  await expect(answers.getByRole('button', { name: /Put it together/ })).toBeVisible()
})
