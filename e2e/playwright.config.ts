import { defineConfig } from '@playwright/test'

/** Another port only when two copies of these tests run side by side. */
const port = process.env.PREVIEW_PORT ?? '4173'

/** Chromium refuses its sandbox to root. */
const isRoot = process.getuid?.() === 0

const args = [
  ...(isRoot ? ['--no-sandbox'] : []),
  // WebGL in software: the same on every machine.
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
  // No request that the page did not make.
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

const executablePath = process.env.CHROMIUM_PATH

export default defineConfig({
  testDir: '.',
  outputDir: '../test-results/e2e',
  reporter: [['list'], ['json', { outputFile: '../test-results/e2e.json' }]],
  workers: 1,
  timeout: 90_000,
  expect: { timeout: 20_000 },
  forbidOnly: process.env.CI !== undefined,
  use: {
    baseURL: `http://127.0.0.1:${port}`,
    viewport: { width: 1280, height: 800 },
    locale: 'en-GB',
    timezoneId: 'Etc/UTC',
    reducedMotion: 'reduce',
    actionTimeout: 20_000,
    trace: 'retain-on-failure',
    launchOptions: { args, ...(executablePath && { executablePath }) },
  },
  webServer: {
    command: 'node node_modules/vite/bin/vite.js preview',
    cwd: '..',
    url: `http://127.0.0.1:${port}`,
    env: { PREVIEW_PORT: port },
    reuseExistingServer: false,
    timeout: 60_000,
  },
})
