/**
 * Finds a browser of the Chromium family for the end-to-end tests, and installs one when there is
 * none: CHROMIUM_PATH, then the PATH, the usual places of macOS and Windows, Playwright's own, the
 * Debian package (as root), a download by Playwright.
 */
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { ROOT } from './install.mjs'

/** Path of a browser; throws an Error that says what to do when none can be had. */
export const ensureBrowser = async () => {
  const found = await findBrowser()
  if (found !== undefined) return found
  for (const install of [installDebian, installPlaywright]) {
    install()
    const installed = await findBrowser()
    if (installed !== undefined) return installed
  }
  throw new Error(
    'No Chromium was found and none could be installed. Install Chromium or Google Chrome, or set ' +
      'CHROMIUM_PATH to the program, then run npm test again.',
  )
}

const findBrowser = async () => {
  const named = process.env.CHROMIUM_PATH
  if (named) {
    if (existsSync(named)) return named
    throw new Error(`CHROMIUM_PATH names ${named}, but there is no such file.`)
  }
  return onPath() ?? USUAL_PLACES.find((place) => existsSync(place)) ?? (await playwrightsOwn())
}

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome']

const onPath = () => {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean)
  const endings = process.platform === 'win32' ? ['.exe'] : ['']
  const candidates = NAMES.flatMap((name) =>
    folders.flatMap((folder) => endings.map((ending) => join(folder, name + ending))),
  )
  return candidates.find((file) => existsSync(file))
}

const USUAL_PLACES = [
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
]

const playwrightsOwn = async () => {
  const { chromium } = await import('@playwright/test')
  const file = chromium.executablePath()
  return existsSync(file) ? file : undefined
}

const isRoot = () => process.getuid?.() === 0

const installDebian = () => {
  if (!isRoot() || !existsSync('/usr/bin/apt-get')) return
  console.log('Installing the Debian package chromium ...')
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' }
  const options = { stdio: ['ignore', 'inherit', 'inherit'], env }
  spawnSync('apt-get', ['update', '-qq'], options)
  spawnSync('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], options)
}

const installPlaywright = () => {
  console.log("Downloading Playwright's own Chromium ...")
  const cli = join(ROOT, 'node_modules/@playwright/test/cli.js')
  spawnSync(process.execPath, [cli, 'install', 'chromium'], {
    stdio: ['ignore', 'inherit', 'inherit'],
  })
}
