import { once, placementsIn, type SheetLayout } from '../../engine/index'
import type { AnswerLetter, ThriftLetter, ThriftQuestion } from './letters'
import type { Hand } from './packer'

/** A fresh worker of the browser's that packs sheets. Its letters come as JSON. */
export function hirePacker(): Hand {
  const worker = new Worker(new URL('./packing.worker.ts', import.meta.url), { type: 'module' })
  const read = createReader()
  const hand: Hand = {
    postMessage: (letter) => worker.postMessage(letter),
    terminate: () => worker.terminate(),
    onmessage: null,
    onerror: null,
  }
  worker.onmessage = ({ data }: MessageEvent<string>) => hand.onmessage?.({ data: read(data) })
  worker.onerror = (event) => hand.onerror?.(event)
  return hand
}

/**
 * Reads letters one after another. Sheets that are cut as in the answer before are the same objects: under the hand most
 * of them are, and need not be read again. Placements are found when they are asked for.
 */
export function createReader(): (text: string) => AnswerLetter {
  let known: ReadonlyMap<string, SheetLayout> = new Map()
  return (text) => {
    const [head, ...lines] = text.split('\n')
    const letter = JSON.parse(head!) as AnswerLetter
    if (letter.kind !== 'answer') return letter
    const now = new Map<string, SheetLayout>()
    const sheets = lines.map((line) => {
      // Two that are cut alike are two objects, since each is a sheet of its own.
      const sheet = (now.has(line) ? undefined : known.get(line)) ?? withPlacements(JSON.parse(line))
      now.set(line, sheet)
      return sheet
    })
    known = now
    return { ...letter, answer: { ...letter.answer, sheets } }
  }
}

function withPlacements({ stock, copies, root }: SheetLayout): SheetLayout {
  const placements = once(() => placementsIn(root))
  return {
    ...{ stock, copies, root },
    get placements() {
      return placements()
    },
  }
}

/** A fresh worker of the browser's that looks for savings. It is let go when it has found them, or to stop it. */
export function hireSaver(
  question: ThriftQuestion,
  onLetter: (letter: ThriftLetter) => void,
  onFailed: (why: string) => void,
): () => void {
  const worker = new Worker(new URL('./thrift.worker.ts', import.meta.url), { type: 'module' })
  worker.onmessage = ({ data }: MessageEvent<ThriftLetter>) => {
    if (data.kind === 'found') worker.terminate()
    onLetter(data)
  }
  worker.onerror = (event) => {
    event.preventDefault()
    worker.terminate()
    onFailed(event.message)
  }
  worker.postMessage(question)
  return () => worker.terminate()
}
