import { readJson } from '../basics/json'
import type { SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { checkJob, packing } from '../sheets/pack'
import { runBatch } from './batch'
import { printedAnswer } from './printed'
import { readText } from './text'

const USAGE =
  'usage: sheets JOB.json, or sheets --batch JOBS.jsonl --seconds S [--stages 2|3|any] [--first rip|crosscut|any] [--turn] --out ANSWERS.jsonl'

/**
 * `sheets JOB.json` prints the answer to a sheet job; `--batch` answers a file of them. What is bad ends with 2 and one
 * line each that says which field and which value; the good lines of a batch are answered all the same.
 */
export async function sheetsCommand(args: readonly string[]): Promise<number> {
  const [file] = args
  if (!file) return refuse(USAGE)
  if (args.includes('--batch')) {
    const wrong = runBatch(args)
    return wrong.reduce((_, line) => refuse(line), 0)
  }
  if (args.length > 1 || file.startsWith('--')) return refuse(USAGE)
  const job = readJob(file)
  if (typeof job === 'string') return refuse(job)
  console.log(JSON.stringify(answerInTime(job)))
  return 0
}

function readJob(file: string): SheetJob | string {
  const text = readText(file)
  if (!text.ok) return text.message
  const json = readJson(text.value)
  if (!json.ok) return `${file}, ${json.message}`
  const job = checkJob(json.value)
  return job.ok ? job.value : job.message
}

function answerInTime(job: SheetJob) {
  const start = performance.now()
  let best: SheetAnswer | null = null
  for (const search = packing(job); ; ) {
    const { done, value } = search.next()
    if (value) best = value
    const elapsed = performance.now() - start
    if (best && (done || (job.seconds !== undefined && elapsed > job.seconds * 1000)))
      return printedAnswer(best, elapsed)
  }
}

function refuse(message: string): number {
  console.error(message.replace(/\s+/g, ' '))
  return 2
}

// Who reads the answer may have had enough of it.
process.stdout.on('error', () => process.exit(0))
process.exitCode = await sheetsCommand(process.argv.slice(2))
