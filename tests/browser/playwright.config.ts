import { defineConfig } from '@playwright/test'
import { QUIET } from './chromium'

const PORT = process.env.CASEWRIGHT_PORT ?? '4179'
const ADDRESS = `http://localhost:${PORT}/`

export default defineConfig({
  testDir: '.',
  outputDir: 'results',
  timeout: 60_000,
  workers: 2,
  fullyParallel: true,
  use: {
    baseURL: ADDRESS,
    viewport: { width: 1440, height: 900 },
    // Only the test of working without a network keeps copies.
    serviceWorkers: 'block',
    launchOptions: { executablePath: process.env.CASEWRIGHT_CHROMIUM ?? '/usr/bin/chromium', args: QUIET },
  },
  webServer: {
    command: `npx vite preview --port ${PORT} --strictPort --logLevel warn`,
    cwd: '../..',
    url: ADDRESS,
    reuseExistingServer: false,
  },
})
