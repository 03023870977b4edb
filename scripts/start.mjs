/** `npm start`: installs what is missing, then serves the app until it is stopped. */
import { spawn } from 'node:child_process'
import { join } from 'node:path'
import { ensureInstalled, ROOT } from './install.mjs'

try {
  ensureInstalled()
} catch (error) {
  console.error(error.message)
  process.exit(1)
}

const vite = join(ROOT, 'node_modules/vite/bin/vite.js')
const server = spawn(process.execPath, [vite, ...process.argv.slice(2)], {
  cwd: ROOT,
  stdio: 'inherit',
})
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal))
server.on('exit', (code) => process.exit(code ?? 0))
