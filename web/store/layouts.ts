import type { SheetJob } from '../../engine/index'
import { createPacker, type Hand, type Packer } from '../workers/packer'
import type { Layout } from './state'
import { useStore } from './store'

/**
 * Keeps the sheets in step with what is shown: every new job goes to the packer, and its answers come back with the job
 * they answer. A job that was answered before has its answer again at once.
 */
export function connectPacker(hire: () => Hand): () => void {
  const answers = new WeakMap<SheetJob, Layout>()
  const packer: Packer = createPacker(hire, {
    onAnswer(job, answer, isSettled) {
      const first = answers.get(job)?.first ?? answer
      const layout = { job, answer, isSettled, first }
      answers.set(job, layout)
      if (job === useStore.getState().derived.sheetJob) show(layout)
    },
    onFailed(job, why) {
      if (job !== useStore.getState().derived.sheetJob) return
      useStore.setState({ packing: 'failed' })
      useStore.getState().actions.say('stop', `The sheets could not be laid out: ${why}. Change anything to try again.`)
    },
  })

  function look(job: SheetJob) {
    const known = answers.get(job)
    if (known) show(known)
    else useStore.setState({ packing: 'thinking' })
    // A settled answer needs no more work, but whatever is being packed now is no longer wanted: it is left to be
    // dropped by the next job.
    if (!known?.isSettled) packer.ask(job)
  }

  look(useStore.getState().derived.sheetJob)
  const forget = useStore.subscribe((state, before) => {
    if (state.derived.sheetJob !== before.derived.sheetJob || (state.layout === null && before.layout !== null)) {
      look(state.derived.sheetJob)
    }
  })
  return () => {
    forget()
    packer.stop()
  }
}

function show(layout: Layout) {
  useStore.setState({ layout, packing: layout.isSettled ? 'idle' : 'thinking' })
}
