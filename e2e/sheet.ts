import {
  test as base,
  type ConsoleMessage,
  type Download,
  expect,
  type Locator,
  type Page,
} from '@playwright/test'

/** Notices of libraries and of the software renderer that are known and harmless. */
const KNOWN = [/THREE\.Clock/, /GPU stall due to ReadPixels/]

const isTrouble = (message: ConsoleMessage): boolean =>
  ['error', 'warning'].includes(message.type()) &&
  !KNOWN.some((known) => known.test(message.text()))

/** A test that fails on any error or warning in the console; `tolerated` is what it provokes itself. */
export const test = base.extend<{ tolerated: RegExp; quietConsole: undefined }>({
  tolerated: [/(?!)/, { option: true }],
  quietConsole: [
    async ({ page, tolerated }, use) => {
      const trouble: string[] = []
      const note = (text: string) => {
        if (!tolerated.test(text)) trouble.push(text)
      }
      page.on('console', (message) => isTrouble(message) && note(message.text()))
      page.on('pageerror', (error) => note(String(error)))
      await use(undefined)
      expect(trouble).toEqual([])
    },
    { auto: true },
  ],
})

/** The whole page with its design; `low` quality draws without shadows, which is enough for most tests. */
export const openSheet = async (page: Page, address = '/?quality=low'): Promise<void> => {
  await page.goto(address)
  await expect(page.getByRole('region', { name: 'Title block' })).toContainText('Parts')
}

/** What the renderer did, once the hive has been drawn. */
export const readCounters = async (page: Page) => {
  await expect(page.locator('canvas')).toBeVisible()
  const counters = await page.waitForFunction(() => {
    const now = window.__combwright?.readCounters()
    return now !== undefined && now.frames > 0 ? now : undefined
  })
  return counters.jsonValue().then((value) => {
    if (value === undefined) throw new Error('There is no 3D view.')
    return value
  })
}

/** The number of frames drawn, once none has been added for a while. */
export const waitUntilStill = async (page: Page): Promise<number> => {
  let before = -1
  await expect
    .poll(
      async () => {
        const { frames } = await readCounters(page)
        const isStill = frames === before
        before = frames
        return isStill
      },
      { intervals: [400], timeout: 30_000 },
    )
    .toBe(true)
  return before
}

export const stageButton = (page: Page, name: string): Locator =>
  page.getByRole('navigation', { name: 'Stages of the job' }).getByRole('button', { name })

export const titleBlock = (page: Page): Locator => page.getByRole('region', { name: 'Title block' })

/** The figures of the title block by their names. */
export const readFigures = (page: Page): Promise<Readonly<Record<string, string>>> =>
  titleBlock(page)
    .locator('.cell')
    .evaluateAll((cells) =>
      Object.fromEntries(
        cells.map((cell) => {
          const [label, ...rest] = [...cell.children].map((child) => child.textContent)
          return [label, rest.join(' ')]
        }),
      ),
    )

/** The field in which a number is typed. */
export const numberField = (page: Page, label: string): Locator =>
  page.getByRole('textbox', { name: label, exact: true })

export const setNumber = async (page: Page, label: string, text: string): Promise<void> => {
  await numberField(page, label).fill(text)
  await page.keyboard.press('Enter')
}

/** A hive of so many frames, by the field for it. */
export const setFrames = async (page: Page, frames: number): Promise<void> => {
  await stageButton(page, 'Cavity').click()
  await setNumber(page, 'Number of frames', String(frames))
  await expect(numberField(page, 'Number of frames')).toHaveValue(String(frames))
}

/** The file that an action hands over. */
export const downloadBy = async (page: Page, act: () => Promise<void>): Promise<Download> => {
  const [download] = await Promise.all([page.waitForEvent('download'), act()])
  return download
}

/** Opens a menu of the head and chooses from it. */
export const chooseFromMenu = async (
  page: Page,
  menu: string,
  item: string | RegExp,
): Promise<void> => {
  await page.getByRole('button', { name: menu, exact: true }).click()
  await page.getByRole('button', { name: item }).click()
}

export { expect }
