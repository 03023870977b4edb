import type { Page } from '@playwright/test'
import {
  expect,
  numberField,
  openSheet,
  readCounters,
  setFrames,
  stageButton,
  test,
  waitUntilStill,
} from './sheet.ts'

const MOST_CALLS = 120
const MOST_TRIANGLES = 200_000

const VIEWS = ['Take apart: Layers', 'Take apart: Together', 'Lid: Open', 'Lid: Shut'] as const

const expectWithinBudget = async (page: Page): Promise<void> => {
  await waitUntilStill(page)
  const { calls, triangles } = await readCounters(page)
  expect(calls).toBeGreaterThan(0)
  expect(calls).toBeLessThanOrEqual(MOST_CALLS)
  expect(triangles).toBeGreaterThan(1000)
  expect(triangles).toBeLessThanOrEqual(MOST_TRIANGLES)
  test
    .info()
    .annotations.push({ type: 'drawn', description: `${calls} calls, ${triangles} triangles` })
}

// Full quality, because shadows are drawn too and count.
test('30 frames take at most 120 draw calls and 200 000 triangles, whole and apart', async ({
  page,
}) => {
  await openSheet(page, '/')
  await setFrames(page, 30)
  await expectWithinBudget(page)
  for (const view of VIEWS) {
    await page.getByRole('button', { name: view }).click()
    await expectWithinBudget(page)
  }
})

test('nothing is drawn while nothing changes', async ({ page }) => {
  await openSheet(page, '/')
  const before = await waitUntilStill(page)
  await page.waitForTimeout(2000)
  expect((await readCounters(page)).frames).toBe(before)
})

test('a hundred edits leave no geometry or texture behind', async ({ page }) => {
  // A hundred pictures in software take their time.
  test.slow()
  await openSheet(page)
  await stageButton(page, 'Cavity').click()
  const frames = numberField(page, 'Number of frames')
  await frames.focus()
  // Four edits for each picture that is waited for: a picture in software takes a second.
  const goRound = async () => {
    const { frames: drawn } = await readCounters(page)
    for (const key of ['ArrowUp', 'ArrowUp', 'ArrowDown', 'ArrowDown']) {
      await page.keyboard.press(key)
    }
    await expect
      .poll(async () => (await readCounters(page)).frames, { intervals: [20] })
      .toBeGreaterThan(drawn)
  }
  // The first round loads what is only needed once.
  await goRound()
  await waitUntilStill(page)
  const before = await readCounters(page)
  for (let round = 0; round < 25; round += 1) await goRound()
  await expect(frames).toHaveValue('20')
  await waitUntilStill(page)
  const after = await readCounters(page)
  expect(Math.abs(after.geometries - before.geometries)).toBeLessThanOrEqual(2)
  expect(Math.abs(after.textures - before.textures)).toBeLessThanOrEqual(2)
})
