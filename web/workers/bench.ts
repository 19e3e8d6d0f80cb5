import type { SheetAnswer, SheetJob } from '../../engine/index'
import type { AnswerLetter, JobLetter } from './letters'

/** What the bench needs from the world around it. */
export interface Surroundings {
  readonly search: (job: SheetJob) => Generator<SheetAnswer | null, SheetAnswer>
  readonly post: (letter: AnswerLetter) => void
  readonly now: () => number
  /** Lets letters come in. */
  readonly breathe: () => Promise<void>
  /** Lets so much time pass, in ms. */
  readonly pause: (ms: number) => Promise<void>
}

/** So long the search goes on before letters are looked at. */
const CHUNK_MS = 8
/**
 * After its first answer a job rests so long before better ones are looked for: whoever changes one thing after another
 * has the machine for that.
 */
const REST_MS = 400
/** Better answers of one job come no closer together than this. */
const BETTER_MS = 120
/** How far it is is told as often as that. */
const AT_WORK_MS = 250
/**
 * A search that has not settled by then ends with the best answer it has. Work is counted, so all but the largest jobs
 * settle before it on a slow machine too, and have the same answer everywhere.
 */
const LONGEST_MS = 60_000

/** Works on the newest job only, in chunks: between two of them a newer job may come and take its place. */
export function createBench({ search, post, now, breathe, pause }: Surroundings): (letter: JobLetter) => Promise<void> {
  let newest = -1
  return async ({ number, job }) => {
    if (number <= newest) return
    newest = number
    const began = now()
    const longest = job.seconds === undefined ? LONGEST_MS : job.seconds * 1000
    const running = search(job)
    let best: SheetAnswer | null = null
    let isNews = false
    let posted = Number.NEGATIVE_INFINITY
    let told = began
    let rounds = 0
    await breathe()
    while (newest === number) {
      const until = now() + CHUNK_MS
      do {
        const next = running.next()
        rounds++
        if (next.done) return post({ kind: 'answer', number, answer: next.value, isSettled: true })
        if (next.value) {
          isNews = next.value !== best || isNews
          best = next.value
        }
      } while (now() < until && !(isNews && posted === Number.NEGATIVE_INFINITY))
      if (best && now() - began > longest) return post({ kind: 'answer', number, answer: best, isSettled: true })
      if (best && isNews && now() - posted >= BETTER_MS) {
        const isFirst = posted === Number.NEGATIVE_INFINITY
        post({ kind: 'answer', number, answer: best, isSettled: false })
        posted = now()
        isNews = false
        if (isFirst) await pause(REST_MS)
      }
      if (now() - told > AT_WORK_MS) {
        post({ kind: 'atWork', number, rounds })
        told = now()
      }
      await breathe()
    }
  }
}
