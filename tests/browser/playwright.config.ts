import { defineConfig } from '@playwright/test'
import { QUIET } from './chromium'

const ADDRESS = 'http://localhost:4179/'

export default defineConfig({
  testDir: '.',
  outputDir: 'results',
  timeout: 60_000,
  workers: 2,
  fullyParallel: true,
  use: {
    baseURL: ADDRESS,
    viewport: { width: 1440, height: 900 },
    launchOptions: { executablePath: process.env.CASEWRIGHT_CHROMIUM ?? '/usr/bin/chromium', args: QUIET },
  },
  webServer: {
    command: 'npx vite preview --port 4179 --strictPort --logLevel warn',
    cwd: '../..',
    url: ADDRESS,
    reuseExistingServer: false,
  },
})
