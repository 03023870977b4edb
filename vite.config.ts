import react from '@vitejs/plugin-react'
import { defineConfig } from 'vitest/config'

/** Another port only when two copies of the end-to-end tests run side by side. */
const previewPort = Number(process.env.PREVIEW_PORT ?? 4173)

export default defineConfig({
  plugins: [react()],
  base: './',
  server: { host: '127.0.0.1', port: 5173, strictPort: false },
  preview: { host: '127.0.0.1', port: previewPort, strictPort: true },
  build: { target: 'es2022', manifest: true, chunkSizeWarningLimit: 1600 },
  worker: { format: 'es' },
  test: {
    include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
    benchmark: { include: ['test/bench/**/*.bench.ts'] },
    environment: 'node',
    // Left to itself, a machine of two cores would use one.
    maxWorkers: '100%',
    // Property tests run thousands of cases, and a busy machine must not fail them.
    testTimeout: 60_000,
  },
})
