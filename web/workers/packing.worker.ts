import { type LinearSolver, packing } from '../../engine/sheets/pack'
import { createBench } from './bench'
import { type JobLetter, written } from './letters'

/** A message to ourselves is the quickest way round the queue of letters; a timer would be held back to 4 ms. */
const bell = new MessageChannel()
const waiting: (() => void)[] = []
bell.port1.onmessage = () => waiting.shift()?.()

/** Loaded with the first job, beside its first answer; null when it cannot be: the packer then proves less. */
let solver: LinearSolver | null | undefined
let isLoading = false

async function load() {
  if (isLoading) return
  isLoading = true
  solver = await import('./solver').then(({ loadSolver }) => loadSolver()).catch(() => null)
}

const work = createBench({
  search: (job) => packing(job, () => solver),
  post: (letter) => postMessage(written(letter)),
  now: () => performance.now(),
  breathe: () =>
    new Promise((resolve) => {
      waiting.push(resolve)
      bell.port2.postMessage(null)
    }),
})

/** What goes wrong in the search must reach the page as a failed worker, not as a promise that nobody heard. */
addEventListener('message', ({ data }: MessageEvent<JobLetter>) => {
  void load()
  work(data).catch((reason: unknown) => {
    setTimeout(() => {
      throw reason
    })
  })
})
