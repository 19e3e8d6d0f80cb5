import type { SheetJob } from '../../engine/index'
import { createPacker, type Hand, type Packer } from '../workers/packer'
import type { Layout, State } from './state'
import { useStore } from './store'
import { followBy, seenBy, type Turn } from './turns'

/**
 * Keeps the sheets in step with what is shown: its job goes to the packer, and answers come back with the job they
 * answer. A job that was answered before has its answer again at once.
 *
 * Under a moving hand the sheets see one design after another, each with its own layout: the next is asked for when the
 * last has been answered, so that layouts are seen as often as the packer can make them. When the hand rests, what is
 * shown then is asked for at once.
 */
export function connectPacker(hire: () => Hand): () => void {
  const answers = new WeakMap<SheetJob, Layout>()
  let asked: State | null = null
  let atPacker: SheetJob | null = null
  const packer: Packer = createPacker(hire, {
    onAnswer(job, answer, isSettled) {
      const first = answers.get(job)?.first ?? answer
      const layout = { job, answer, isSettled, first }
      answers.set(job, layout)
      if (isWanted(job)) show(layout)
    },
    onFailed(job, why) {
      atPacker = null
      if (!isWanted(job)) return
      asked = null
      useStore.setState({ packing: 'failed' })
      useStore.getState().actions.say('stop', `The sheets could not be laid out: ${why}. Change anything to try again.`)
    },
  })

  function isWanted(job: SheetJob): boolean {
    return job === (asked ?? seenBy.sheets.getState()).derived.sheetJob
  }

  /** A settled answer needs no more work; whatever is being packed then is left to be dropped by the next job. */
  function ask(job: SheetJob) {
    if (job === atPacker || answers.get(job)?.isSettled) return
    atPacker = job
    packer.ask(job)
  }

  const follow: Turn = (state, isHandResting) => {
    if (!state.preview) return followAtRest(state)
    const next = asked && !isHandResting ? asked : state
    const layout = answers.get(next.derived.sheetJob)
    asked = layout ? null : next
    ask(next.derived.sheetJob)
    if (!layout) return false
    seenBy.sheets.setState({ ...next, layout, packing: packingOf(layout) }, true)
    return next === state
  }

  function followAtRest(state: State): boolean {
    const before = seenBy.sheets.getState()
    asked = null
    seenBy.sheets.setState(state, true)
    const { sheetJob } = state.derived
    if (sheetJob !== before.derived.sheetJob || (state.layout === null && before.layout !== null)) look(sheetJob)
    return true
  }

  function look(job: SheetJob) {
    const known = answers.get(job)
    if (known) show(known)
    else useStore.setState({ packing: 'thinking' })
    ask(job)
  }

  look(useStore.getState().derived.sheetJob)
  const leave = followBy('sheets', follow)
  return () => {
    leave()
    packer.stop()
  }
}

function show(layout: Layout) {
  useStore.setState({ layout, packing: packingOf(layout) })
}

function packingOf({ isSettled }: Layout): State['packing'] {
  return isSettled ? 'idle' : 'thinking'
}
