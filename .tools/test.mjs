/**
 * Installs what is missing, then runs every check: types, lint and format, then unit, property and outside tests with
 * the import law, then the app in Chromium. The last line counts them all.
 */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { chromiumPath } from './chromium.mjs'
import { installPackages, run, runAside } from './install.mjs'

installPackages()
const CASEWRIGHT_CHROMIUM = chromiumPath()
const reports = mkdtempSync(join(tmpdir(), 'casewright-'))
const count = { passed: 0, failed: 0 }

await Promise.all([
  check('types of everything', ['tsc', '-p', '.', '--noEmit']),
  check('types of the engine, without a browser', ['tsc', '-p', 'engine', '--noEmit']),
  check('lint and format', ['biome', 'check', '--error-on-warnings']),
])

const unit = join(reports, 'unit.json')
const unitStatus = run('npx', ['vitest', 'run', '--reporter=dot', '--reporter=json', `--outputFile.json=${unit}`])
add(unitStatus, read(unit), ({ numPassedTests, numFailedTests }) => [numPassedTests, numFailedTests])

const browser = join(reports, 'browser.json')
const browserStatus =
  run('npx', ['vite', 'build', '--logLevel', 'warn']) ||
  run('npx', ['playwright', 'test', '-c', 'tests/browser/playwright.config.ts', '--reporter=list,json'], {
    env: { ...process.env, CASEWRIGHT_CHROMIUM, PLAYWRIGHT_JSON_OUTPUT_FILE: browser },
  })
add(browserStatus, read(browser), ({ stats }) => [stats.expected, stats.unexpected + stats.flaky])

rmSync(reports, { recursive: true })
console.log(`${count.passed} passed, ${count.failed} failed`)
process.exit(count.failed === 0 ? 0 : 1)

/** Checks run side by side, so what one says comes out whole when it is done. */
async function check(name, command) {
  const { status, said } = await runAside('npx', command)
  const isSound = status === 0
  process.stdout.write(said)
  console.log(`${isSound ? 'ok' : 'FAILED'}: ${name}`)
  if (isSound) count.passed++
  else count.failed++
}

/** A runner that fails without a failed test (a broken file, a crash) still counts as one failure. */
function add(status, report, tally) {
  const [passed, failed] = report ? tally(report) : [0, 0]
  count.passed += passed
  count.failed += status !== 0 && failed === 0 ? 1 : failed
  if (status === 0 && passed === 0) count.failed++
}

function read(path) {
  try {
    return JSON.parse(readFileSync(path, 'utf8'))
  } catch {
    return null
  }
}
