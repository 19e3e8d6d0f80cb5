/** Installs what is missing, measures, and prints one JSON object. What is said meanwhile goes to standard error. */
import { chromiumPath } from './chromium.mjs'
import { HOUSE, installPackages, run } from './install.mjs'

installPackages()
const CASEWRIGHT_CHROMIUM = chromiumPath()
if (run('npx', ['vite', 'build', '--logLevel', 'error'], { stdio: ['ignore', 2, 2] }) !== 0) process.exit(1)
process.exit(
  run(process.execPath, [`${HOUSE}/node_modules/tsx/dist/cli.mjs`, `${HOUSE}/tests/bench/bench.ts`], {
    env: { ...process.env, CASEWRIGHT_CHROMIUM },
  }),
)
