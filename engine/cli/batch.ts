import { closeSync, openSync, realpathSync, writeSync } from 'node:fs'
import { readJson } from '../basics/json'
import type { Result } from '../basics/result'
import type { JobPart, SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { checkJob, packing } from '../sheets/pack'
import { sheetCount } from '../sheets/tally'
import { type BatchOptions, batchOptions } from './options'
import { printedAnswer } from './printed'
import { readText, whyNoFile } from './text'

/**
 * Answers one job a line in one process, each in at most so many seconds, and prints a line that sums them up. A bad
 * line is answered with its error, and the next is taken. Returns what was wrong, a line each.
 */
export function runBatch(args: readonly string[]): readonly string[] {
  const options = batchOptions(args)
  if (!options.ok) return [options.message]
  const text = readText(options.value.jobs)
  if (!text.ok) return [text.message]
  if (isSameFile(options.value.jobs, options.value.out))
    return [`--out is ${options.value.out}, which holds the jobs; it must be another file`]
  const out = opened(options.value.out)
  if (typeof out === 'string') return [out]
  try {
    return answerAll(text.value, out, options.value)
  } catch (error) {
    return [`--out ${options.value.out} cannot be written to: ${whyNoFile(error)}`]
  } finally {
    closeSync(out)
  }
}

/** Whether two names are of one file that is there. */
function isSameFile(one: string, other: string): boolean {
  try {
    return realpathSync(one) === realpathSync(other)
  } catch {
    return false
  }
}

function opened(file: string): number | string {
  try {
    return openSync(file, 'w')
  } catch (error) {
    return `--out ${file} cannot be written to: ${whyNoFile(error)}`
  }
}

function answerAll(text: string, out: number, options: BatchOptions): string[] {
  const start = performance.now()
  const wrong: string[] = []
  const sums = { jobs: 0, sheets: 0, proved: 0, refused: 0 }
  const write = (answer: object) => writeSync(out, `${JSON.stringify(answer)}\n`)
  for (const [at, line] of text.split('\n').entries()) {
    if (line.trim() === '') continue
    const { name, job } = jobIn(line, at + 1, options)
    if (!job.ok) {
      sums.refused++
      wrong.push(job.message)
      write({ name, error: job.message })
      continue
    }
    const answer = answerTimed(job.value, options.seconds)
    write({ name, ...answer })
    sums.jobs++
    sums.sheets += answer.sheets.reduce((sum, { copies }) => sum + copies, 0)
    sums.proved += answer.proved ? 1 : 0
  }
  console.log(JSON.stringify({ ...sums, seconds: Math.round(performance.now() - start) / 1000 }))
  return wrong
}

/** The job on a line and its name, or what is wrong with it, which begins with the number of the line. */
function jobIn(
  text: string,
  line: number,
  options: BatchOptions,
): { readonly name: unknown; readonly job: Result<SheetJob> } {
  const raw = readJson(text, line)
  if (!raw.ok) return { name: `line ${line}`, job: raw }
  const fields = raw.value as { readonly name?: unknown } | null
  const job = checkJob(withOptions(raw.value, options))
  return {
    name: fields?.name ?? `line ${line}`,
    job: job.ok ? job : { ok: false, message: `line ${line}: ${job.message}` },
  }
}

/** What is no object stays what it is, to be refused. */
function withOptions(raw: unknown, { seconds, stages, first, turn }: BatchOptions): unknown {
  if (typeof raw !== 'object' || raw === null || Array.isArray(raw)) return raw
  const { parts } = raw as { readonly parts?: unknown }
  return {
    ...raw,
    parts: turn && Array.isArray(parts) ? parts.map(turned) : parts,
    seconds,
    ...(stages === undefined ? {} : { stages }),
    ...(first === undefined ? {} : { firstCut: first }),
  }
}

function turned(part: unknown): unknown {
  return typeof part === 'object' && part !== null ? { ...(part as JobPart), rotate: true } : part
}

function answerTimed(job: SheetJob, seconds: number) {
  const start = performance.now()
  let first: { readonly firstMs: number; readonly firstSheets: number } | null = null
  let best: SheetAnswer | null = null
  for (const search = packing(job); ; ) {
    const { done, value } = search.next()
    const elapsed = performance.now() - start
    if (value) {
      best = value
      first ??= { firstMs: Math.round(elapsed * 100) / 100, firstSheets: sheetCount(value) }
    }
    if (!best || !(done || elapsed > seconds * 1000)) continue
    return { ...printedAnswer(best, elapsed), ...first }
  }
}
