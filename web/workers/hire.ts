import type { AnswerLetter } from './letters'
import type { Hand } from './packer'

/** A fresh worker of the browser's that packs sheets. Its letters come as JSON. */
export function hirePacker(): Hand {
  const worker = new Worker(new URL('./packing.worker.ts', import.meta.url), { type: 'module' })
  const hand: Hand = {
    postMessage: (letter) => worker.postMessage(letter),
    terminate: () => worker.terminate(),
    onmessage: null,
    onerror: null,
  }
  worker.onmessage = ({ data }: MessageEvent<string>) => hand.onmessage?.({ data: JSON.parse(data) as AnswerLetter })
  worker.onerror = (event) => hand.onerror?.(event)
  return hand
}
