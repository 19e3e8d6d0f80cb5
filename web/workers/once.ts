import type { SheetAnswer, SheetJob } from '../../engine/index'
import { createPacker, type Hand } from './packer'

/** One job packed by a worker of its own, which is let go when it has settled or is not waited for any more. */
export interface Packing {
  /** Fails with why it could not be packed. */
  readonly answer: Promise<SheetAnswer>
  readonly stop: () => void
}

export function packOnce(job: SheetJob, hire: () => Hand): Packing {
  let stop = () => {}
  const answer = new Promise<SheetAnswer>((resolve, reject) => {
    const packer = createPacker(hire, {
      onAnswer(_, found, isSettled) {
        if (!isSettled) return
        packer.stop()
        resolve(found)
      },
      onFailed(_, why) {
        packer.stop()
        reject(why)
      },
    })
    stop = () => packer.stop()
    packer.ask(job)
  })
  return { answer, stop }
}
