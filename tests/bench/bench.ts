import { cpus } from 'node:os'
import { benchBrowser } from './browser'
import { benchEngine } from './engine'

const engine = benchEngine()
const browser = await benchBrowser()
const machine = { cpu: cpus()[0]?.model ?? 'unknown', cores: cpus().length, node: process.version }
console.log(JSON.stringify({ machine, engine, browser }, null, 2))
