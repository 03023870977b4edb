/** Runs the end-to-end tests on the built app, in a browser that is found or installed. */
import { spawnSync } from 'node:child_process'
import { join } from 'node:path'
import { ensureBrowser } from './browser.mjs'
import { ROOT } from './install.mjs'

const playwright = join(ROOT, 'node_modules/@playwright/test/cli.js')
const args = [playwright, 'test', '--config', 'e2e/playwright.config.ts', ...process.argv.slice(2)]
try {
  const env = { ...process.env, CHROMIUM_PATH: await ensureBrowser() }
  const stdio = ['ignore', 'inherit', 'inherit']
  process.exitCode = spawnSync(process.execPath, args, { cwd: ROOT, stdio, env }).status ?? 1
} catch (error) {
  console.error(error.message)
  process.exitCode = 1
}
