import { readFileSync } from 'node:fs'
import { checkJob } from '../sheets/check'
import type { SheetJob } from '../sheets/job'
import type { SheetAnswer } from '../sheets/layout'
import { packSheets } from '../sheets/pack'

/** `sheets JOB.json`: prints the answer to a sheet job. A bad job ends with 2 and one line that says what is wrong. */
export function sheetsCommand(args: readonly string[]): number {
  const [file] = args
  if (!file) return refuse('usage: npm run --silent sheets -- JOB.json')
  const job = readJob(file)
  if (typeof job === 'string') return refuse(job)
  const start = performance.now()
  const isOver = () => job.seconds !== undefined && performance.now() - start > job.seconds * 1000
  const answer = packSheets(job, isOver)
  console.log(JSON.stringify(printed(answer, performance.now() - start)))
  return 0
}

function readJob(file: string): SheetJob | string {
  try {
    const job = checkJob(JSON.parse(readFileSync(file, 'utf8')))
    return job.ok ? job.value : job.message
  } catch (error) {
    return `${file}: ${(error as Error).message.split('\n')[0]}`
  }
}

function printed({ sheets, unplaced, bounds, proved }: SheetAnswer, elapsedMs: number) {
  const plain = sheets.map(({ stock, copies, placements }) => ({ stock, copies, placements }))
  return { sheets: plain, unplaced, bounds, proved, elapsedMs: Math.round(elapsedMs) }
}

function refuse(message: string): number {
  console.error(message)
  return 2
}

process.exitCode = sheetsCommand(process.argv.slice(2))
