import { existsSync } from 'node:fs'
import { run } from './install.mjs'

const PLACES = ['/usr/bin/chromium', '/usr/bin/chromium-browser', '/usr/bin/google-chrome']

/** The Chromium to drive: CASEWRIGHT_CHROMIUM, or the machine's own, or Debian's, installed when we may. */
export function chromiumPath() {
  const found = findChromium()
  if (found) return found
  if (process.getuid?.() === 0 && existsSync('/usr/bin/apt-get')) {
    console.error('Installing Chromium...')
    const quiet = { stdio: ['ignore', 'ignore', 2], env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } }
    run('apt-get', ['update', '-qq'], quiet)
    run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], quiet)
  }
  const installed = findChromium()
  if (!installed) {
    console.error('Chromium is missing: install the package `chromium`, or name one in CASEWRIGHT_CHROMIUM.')
    process.exit(1)
  }
  return installed
}

function findChromium() {
  return [process.env.CASEWRIGHT_CHROMIUM, ...PLACES].find((path) => path && existsSync(path))
}
