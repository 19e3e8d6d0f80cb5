import { spawn, spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'

/** The folder of the project, whatever folder a command was called from. */
export const HOUSE = fileURLToPath(new URL('..', import.meta.url))

/** Runs a command in the house with its output on ours; its exit code. */
export function run(command, args, options = {}) {
  const { status, error } = spawnSync(command, args, { cwd: HOUSE, stdio: 'inherit', ...options })
  if (error) console.error(`${command}: ${error.message}`)
  return status ?? 1
}

/** Runs a command in the house beside others: its exit code, and all that it said. */
export function runAside(command, args) {
  return new Promise((resolve) => {
    const child = spawn(command, args, { cwd: HOUSE, stdio: ['ignore', 'pipe', 'pipe'] })
    let said = ''
    for (const pipe of [child.stdout, child.stderr]) pipe.setEncoding('utf8').on('data', (text) => (said += text))
    child.on('error', ({ message }) => resolve({ status: 1, said: `${said}${command}: ${message}\n` }))
    child.on('close', (status) => resolve({ status: status ?? 1, said }))
  })
}

/** Installs what package-lock.json names and node_modules lacks. What npm says goes to standard error. */
export function installPackages() {
  if (isInstalled()) return
  console.error('Installing the packages that are missing...')
  const status = run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error'], { stdio: ['ignore', 2, 2] })
  if (status !== 0) {
    console.error('The packages could not be installed. Is the npm registry within reach?')
    process.exit(status)
  }
}

/** npm leaves a copy of what it installed; it is complete when it names every package that this machine can take. */
function isInstalled() {
  const left = `${HOUSE}/node_modules/.package-lock.json`
  if (!existsSync(left)) return false
  const wanted = JSON.parse(readFileSync(`${HOUSE}/package-lock.json`, 'utf8')).packages
  const there = JSON.parse(readFileSync(left, 'utf8')).packages
  return Object.entries(wanted).every(
    ([path, { version, optional, peer }]) => path === '' || optional || peer || there[path]?.version === version,
  )
}
