import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'
import { expect, numberField, openSheet, stageButton, test, titleBlock } from './sheet.ts'

const STAGES = [
  'Frame',
  'Cavity',
  'Walls',
  'Lid',
  'Floor',
  'Openings',
  'Stand',
  'Site',
  'Colony & keeper',
  'Shop',
] as const

/** Stages that together hold every kind of input. */
const VARIED = ['Frame', 'Cavity', 'Openings'] as const

const ANSWERS = [/Checks/, 'Lifting', 'Cut list'] as const

/**
 * Everything is looked at once, at the widest, and all that a phone sets otherwise on the phone; between
 * them one stage and the bench are enough.
 */
const SIZES = [
  { width: 1600, height: 1000, stages: STAGES, answers: ANSWERS },
  { width: 1024, height: 768, stages: ['Cavity'], answers: [] },
  { width: 390, height: 844, stages: VARIED, answers: ANSWERS },
] as const

function sizeName({ width, height }: { readonly width: number; readonly height: number }): string {
  return `${width} x ${height}`
}

/** The rules that the page breaks, each with what breaks it. */
const violationsOn = async (page: Page): Promise<readonly string[]> => {
  const { violations } = await new AxeBuilder({ page }).analyze()
  return violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.html.slice(0, 120)}`),
  )
}

for (const { stages, answers, ...viewport } of SIZES) {
  test.describe(sizeName(viewport), () => {
    test.use({ viewport })

    test('axe finds nothing on stages and answers', async ({ page }) => {
      test.slow()
      await openSheet(page)
      for (const stage of stages) {
        await stageButton(page, stage).click()
        await unfoldAll(page)
        expect(await violationsOn(page), stage).toEqual([])
      }
      for (const answer of answers) {
        await page.getByRole('tab', { name: answer }).click()
        expect(await violationsOn(page), String(answer)).toEqual([])
      }
      await page.getByRole('tab', { name: 'Workshop' }).click()
      await page.getByRole('button', { name: /^Set-ups/ }).click()
      await expect(page.getByRole('dialog').locator('.set-up').first()).toBeVisible()
      expect(await violationsOn(page), 'Bench').toEqual([])
    })
  })
}

// A small laptop squeezes the three columns most.
for (const { width, height } of [...SIZES, { width: 1280, height: 800 }]) {
  test.describe(sizeName({ width, height }), () => {
    test.use({ viewport: { width, height } })

    test('nothing is wider than the page, and no control lies over another', async ({ page }) => {
      await openSheet(page)
      for (const stage of STAGES) {
        await stageButton(page, stage).click()
        await unfoldAll(page)
        expect(await sidewaysScroll(page), stage).toBe(0)
        expect(await coveredControls(page), stage).toEqual([])
      }
    })
  })
}

test.describe('200 % zoom of a small laptop', () => {
  test.use({ viewport: { width: 640, height: 400 }, deviceScaleFactor: 2 })

  test('needs no sideways scroll, and everything can still be reached', async ({ page }) => {
    await openSheet(page)
    expect(await sidewaysScroll(page)).toBe(0)
    await stageButton(page, 'Cavity').click()
    await numberField(page, 'Number of frames').fill('24')
    await page.keyboard.press('Enter')
    await expect(page.locator('#hive-in-words')).toContainText('24 frames')
    await page.getByRole('tab', { name: 'Cut list' }).click()
    await expect(page.getByRole('columnheader', { name: 'Mark' }).first()).toBeVisible()
    await titleBlock(page).scrollIntoViewIfNeeded()
    await expect(titleBlock(page)).toBeInViewport()
    expect(await sidewaysScroll(page)).toBe(0)
  })
})

test('axe finds nothing in the menus and dialogs', async ({ page }) => {
  await openSheet(page)
  for (const menu of ['Examples', 'Export', 'Build sheet']) {
    await page.getByRole('button', { name: menu, exact: true }).click()
    expect(await violationsOn(page), menu).toEqual([])
    await page.keyboard.press('Escape')
  }
  await page.getByRole('button', { name: 'Link', exact: true }).click()
  await expect(page.getByRole('dialog')).toBeVisible()
  expect(await violationsOn(page), 'Link').toEqual([])
})

test('the keyboard alone is enough', async ({ page }) => {
  await openSheet(page)
  // The first stop leads past the head to the inputs.
  await page.keyboard.press('Tab')
  await expect(page.getByRole('link', { name: 'Skip to the inputs' })).toBeFocused()

  await tabTo(page, stageButton(page, 'Frame'))
  await page.keyboard.press('ArrowDown')
  await expect(stageButton(page, 'Cavity')).toBeFocused()
  await expect(stageButton(page, 'Cavity')).toHaveAttribute('aria-current', 'step')

  const frames = numberField(page, 'Number of frames')
  await tabTo(page, frames)
  await page.keyboard.press('ArrowUp')
  await expect(frames).toHaveValue('21')
  await page.keyboard.press('Control+a')
  await page.keyboard.type('26')
  await page.keyboard.press('Enter')
  await expect(frames).toHaveValue('26')

  const slider = page.getByRole('slider', { name: 'Number of frames, slider' })
  await tabTo(page, slider)
  await page.keyboard.press('ArrowRight')
  await expect(frames).toHaveValue('27')
  for (const value of ['26', '21', '20']) {
    await page.keyboard.press('Control+z')
    await expect(frames).toHaveValue(value)
  }

  const apart = page.getByRole('slider', { name: 'Take apart' })
  await tabTo(page, apart)
  await page.keyboard.press('End')
  await expect(apart).toHaveValue('2')

  await tabTo(page, page.getByRole('tab', { name: 'Warmth' }))
  await page.keyboard.press('ArrowLeft')
  await expect(page.getByRole('tab', { name: 'Workshop' })).toBeFocused()
  await page.keyboard.press('ArrowLeft')
  await expect(page.getByRole('tab', { name: 'Cut list' })).toBeFocused()
  await expect(page.getByRole('columnheader', { name: 'Mark' }).first()).toBeVisible()

  const menu = page.getByRole('button', { name: 'Build sheet', exact: true })
  await tabTo(page, menu, 'Shift+Tab')
  await page.keyboard.press('Enter')
  await page.keyboard.press('Tab')
  await expect(page.getByRole('button', { name: /PDF on A4/ })).toBeFocused()
  await page.keyboard.press('Escape')
  await expect(menu).toBeFocused()
})

/** Presses Tab until something has the focus; fails when a whole round does not reach it. */
const tabTo = async (
  page: Page,
  target: ReturnType<Page['locator']>,
  key: 'Tab' | 'Shift+Tab' = 'Tab',
): Promise<void> => {
  const MOST_STOPS = 120
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return
    await page.keyboard.press(key)
  }
  await expect(target).toBeFocused()
}

const unfoldAll = (page: Page): Promise<void> =>
  page.locator('details').evaluateAll((all) => {
    for (const details of all) details.setAttribute('open', '')
  })

const sidewaysScroll = (page: Page): Promise<number> =>
  page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement
    return Math.max(0, scrollWidth - clientWidth)
  })

/** Pairs of controls of which one covers the middle of the other. */
const coveredControls = (page: Page): Promise<readonly string[]> =>
  page.locator('button:visible, input:visible, select:visible').evaluateAll((controls) => {
    const nameOf = (element: Element) =>
      element.getAttribute('aria-label') ?? element.textContent ?? element.tagName
    return controls.flatMap((control) => {
      control.scrollIntoView({ block: 'center' })
      const { left, top, width, height } = control.getBoundingClientRect()
      const hit = document.elementFromPoint(left + width / 2, top + height / 2)
      const other = hit?.closest('button, input, select')
      const isCovered = other !== null && other !== undefined && other !== control
      return isCovered ? [`${nameOf(other)} over ${nameOf(control)}`] : []
    })
  })
