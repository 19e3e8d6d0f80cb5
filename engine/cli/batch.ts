import { closeSync, openSync, readFileSync, writeSync } from 'node:fs'
import type { JobPart, SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { checkJob, packing } from '../sheets/pack'
import type { LinearSolver } from '../sheets/solver'
import { sheetCount } from '../sheets/tally'

interface Options {
  readonly jobs: string
  readonly out: string
  readonly seconds: number
  readonly stages?: 2 | 3 | null
  readonly first?: 'rip' | 'crosscut' | 'any'
  readonly turn: boolean
}

/**
 * Answers one job a line in one process, each in at most so many seconds, and prints a line that sums them up. What is
 * wrong with the options or a job is returned; answers before it are kept.
 */
export function runBatch(args: readonly string[], usage: string, solve: LinearSolver): string | null {
  const options = optionsIn(args)
  if (!options) return usage
  const start = performance.now()
  let out = -1
  const sums = { jobs: 0, sheets: 0, proved: 0 }
  try {
    const lines = readFileSync(options.jobs, 'utf8').split('\n')
    out = openSync(options.out, 'w')
    for (const [at, line] of lines.entries()) {
      if (line.trim() === '') continue
      const raw = JSON.parse(line) as { readonly name?: unknown; readonly parts?: unknown }
      const job = checkJob(withOptions(raw, options))
      if (!job.ok) return `line ${at + 1}: ${job.message}`
      const answer = answerTimed(job.value, options.seconds, solve)
      writeSync(out, `${JSON.stringify({ name: raw.name ?? `line ${at + 1}`, ...answer })}\n`)
      sums.jobs++
      sums.sheets += answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
      sums.proved += answer.proved ? 1 : 0
    }
  } catch (error) {
    return `${options.jobs}: ${(error as Error).message.split('\n')[0]}`
  } finally {
    if (out >= 0) closeSync(out)
  }
  console.log(JSON.stringify({ ...sums, seconds: Math.round(performance.now() - start) / 1000 }))
  return null
}

function optionsIn(args: readonly string[]): Options | null {
  const given = new Map<string, string>()
  for (let at = 0; at < args.length; at++) {
    const name = args[at]!
    if (!['--batch', '--out', '--seconds', '--stages', '--first', '--turn'].includes(name)) return null
    if (name === '--turn') given.set(name, 'yes')
    else given.set(name, args[++at] ?? '')
  }
  const jobs = given.get('--batch')
  const out = given.get('--out')
  const seconds = Number(given.get('--seconds'))
  if (!jobs || !out || !(seconds > 0)) return null
  const stages = stagesIn(given.get('--stages'))
  const first = given.get('--first')
  if (stages === 'wrong' || !isFirst(first)) return null
  return { jobs, out, seconds, stages, first, turn: given.has('--turn') }
}

function stagesIn(text: string | undefined): 2 | 3 | null | undefined | 'wrong' {
  if (text === undefined) return undefined
  if (text === 'any') return null
  return text === '2' ? 2 : text === '3' ? 3 : 'wrong'
}

function isFirst(text: string | undefined): text is Options['first'] {
  return text === undefined || text === 'rip' || text === 'crosscut' || text === 'any'
}

function withOptions(raw: { readonly parts?: unknown }, { seconds, stages, first, turn }: Options): unknown {
  const parts =
    turn && Array.isArray(raw.parts) ? raw.parts.map((part: JobPart) => ({ ...part, rotate: true })) : raw.parts
  return {
    ...raw,
    parts,
    seconds,
    ...(stages === undefined ? {} : { stages }),
    ...(first === undefined ? {} : { firstCut: first }),
  }
}

function answerTimed(job: SheetJob, seconds: number, solve: LinearSolver) {
  const start = performance.now()
  let first: { readonly firstMs: number; readonly firstSheets: number } | null = null
  let best: SheetAnswer | null = null
  for (const search = packing(job, () => solve); ; ) {
    const { done, value } = search.next()
    const elapsed = performance.now() - start
    if (value) {
      best = value
      first ??= { firstMs: Math.round(elapsed * 100) / 100, firstSheets: sheetCount(value) }
    }
    if (!best || !(done || elapsed > seconds * 1000)) continue
    const sheets = best.sheets.map(({ stock, copies, placements }) => ({ stock, copies, placements }))
    const { unplaced, bounds, proved } = best
    return { sheets, unplaced, bounds, proved, elapsedMs: Math.round(elapsed), ...first }
  }
}
