import { cpus } from 'node:os'
import { benchBrowser } from './browser'
import { benchEngine } from './engine'
import { benchPacking } from './packing'

const engine = benchEngine()
const browser = await benchBrowser()
const packing = benchPacking()
const machine = { cpu: cpus()[0]?.model ?? 'unknown', cores: cpus().length, node: process.version }
console.log(JSON.stringify({ machine, engine, browser, packing }, null, 2))
