import { packing } from '../../engine/sheets/pack'
import { createBench } from './bench'
import { type JobLetter, written } from './letters'

/** A message to ourselves is the quickest way round the queue of letters; a timer would be held back to 4 ms. */
const bell = new MessageChannel()
const waiting: (() => void)[] = []
bell.port1.onmessage = () => waiting.shift()?.()

const work = createBench({
  search: packing,
  post: (letter) => postMessage(written(letter)),
  now: () => performance.now(),
  breathe: () =>
    new Promise((resolve) => {
      waiting.push(resolve)
      bell.port2.postMessage(null)
    }),
  pause: (ms) => new Promise((resolve) => setTimeout(resolve, ms)),
})

/** What goes wrong in the search must reach the page as a failed worker, not as a promise that nobody heard. */
addEventListener('message', ({ data }: MessageEvent<JobLetter>) => {
  work(data).catch((reason: unknown) => {
    setTimeout(() => {
      throw reason
    })
  })
})
