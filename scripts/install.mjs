import { spawnSync } from 'node:child_process'
import { existsSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The project's root; the scripts work from any directory. Only Node's own modules are used here. */
export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)))

/** Installs the packages named in the lock file unless they are there and not older than it. */
export const ensureInstalled = () => {
  if (isInstalled()) return
  console.log('Installing packages (npm ci) ...')
  const code = runNpm(['ci', '--no-audit', '--no-fund'])
  if (code !== 0) throw new Error('npm ci failed: see its messages above.')
}

/** npm writes this file at the end of each installation. */
const isInstalled = () => {
  const mark = join(ROOT, 'node_modules', '.package-lock.json')
  const lock = join(ROOT, 'package-lock.json')
  return existsSync(mark) && statSync(mark).mtimeMs >= statSync(lock).mtimeMs
}

/** Runs npm in the project without input; returns its exit code. */
export const runNpm = (args) => {
  // npm names its own program to the scripts it runs; without it the shell has to find npm.
  const own = process.env.npm_execpath
  const isOwn = own?.endsWith('.js')
  const [command, before] = isOwn ? [process.execPath, [own]] : ['npm', []]
  const shell = !isOwn && process.platform === 'win32'
  const stdio = ['ignore', 'inherit', 'inherit']
  return spawnSync(command, [...before, ...args], { cwd: ROOT, stdio, shell }).status ?? 1
}
