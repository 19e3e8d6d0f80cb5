/** `sheets` and `plan`: the engine without a browser. Only the answer goes to standard output. */
import { resolve } from 'node:path'
import { HOUSE, installPackages, run } from './install.mjs'

installPackages()
const [command, ...args] = process.argv.slice(2)
const cwd = process.env.INIT_CWD ?? process.cwd()
const tsx = resolve(HOUSE, 'node_modules/tsx/dist/cli.mjs')
process.exit(run(process.execPath, [tsx, `${HOUSE}/engine/cli/${command}.ts`, ...args], { cwd }))
