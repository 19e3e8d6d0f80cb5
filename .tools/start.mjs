/** Installs what is missing, builds the app and serves it on this machine. Opens no window: it says where to look. */
import { HOUSE, installPackages, run } from './install.mjs'
import { portFrom } from './port.mjs'

const port = portFrom(process.env.PORT)
if (!port.ok) {
  console.error(port.message)
  process.exit(2)
}
installPackages()
if (run('npx', ['vite', 'build', '--logLevel', 'warn']) !== 0) process.exit(1)
const { preview } = await import('vite')
const server = await preview({
  root: `${HOUSE}/web`,
  configFile: `${HOUSE}/vite.config.ts`,
  preview: { port: port.value },
})
console.log(`\nCasewright is at ${server.resolvedUrls.local[0]} — Ctrl+C ends it.`)
