import { heldBy, isSameButLocked, relaid, type SheetJob, sheetCount, standing } from '../../engine/index'
import { createPacker, type Hand, type Packer } from '../workers/packer'
import { searching } from './searching'
import { currentLayout, type Layout, type State } from './state'
import { useStore } from './store'
import { followBy, seenBy, type Turn } from './turns'

/**
 * Keeps the sheets in step with what is shown: its job goes to the packer, and answers come back with the job they
 * answer. A job that was answered before has its answer again at once.
 *
 * Under a moving hand the sheets see one design after another, each with its own layout: the next is asked for when the
 * last has been answered, so that layouts are seen as often as the packer can make them. They stay near the layout in
 * sight, so that the picture does not jump. When the hand rests, what is shown then is asked for at once, and by itself:
 * a design at rest has the layout that it has when it is opened again.
 */
export function connectPacker(hire: () => Hand): () => void {
  const answers = new WeakMap<SheetJob, Layout>()
  /** Answers that stayed near what was in sight under the hand. */
  const passing = new WeakMap<SheetJob, Layout>()
  let asked: State | null = null
  let atPacker: { readonly job: SheetJob; readonly isPassing: boolean } | null = null
  const packer: Packer = createPacker(hire, {
    onAnswer(job, answer, isSettled) {
      const isPassing = atPacker?.isPassing ?? false
      const known = isPassing ? passing : answers
      const first = known.get(job)?.first ?? answer
      const layout = { job, answer, isSettled, first, isPassing }
      known.set(job, layout)
      if (isWanted(job) && !isWorse(layout, useStore.getState().layout)) show(layout)
    },
    onProgress(job, rounds) {
      if (isWanted(job)) searching.setState({ rounds })
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
    if ((job === atPacker?.job && !atPacker.isPassing) || answers.get(job)?.isSettled) return
    atPacker = { job, isPassing: false }
    searching.setState({ rounds: 0 })
    packer.ask(job)
  }

  /** What is in sight stays, as if nothing better could be found. */
  function stop() {
    const layout = currentLayout(useStore.getState())
    if (!layout || layout.isSettled || layout.isPassing) return
    packer.stop()
    atPacker = null
    const { isHeld: _, ...own } = layout
    const stopped = { ...own, isSettled: true, isStopped: true }
    answers.set(layout.job, stopped)
    show(stopped)
  }

  /** The search begins anew; what is in sight stays until there is a better one. */
  function goOn() {
    const layout = currentLayout(useStore.getState())
    if (!layout?.isStopped) return
    answers.delete(layout.job)
    const { isStopped: _, ...own } = layout
    show({ ...own, isSettled: false, isHeld: true })
    ask(layout.job)
  }

  function askUnderHand({ derived, table }: State) {
    const { sheetJob: job, cutList } = derived
    if (job === atPacker?.job || answers.has(job) || passing.get(job)?.isSettled) return
    const seen = seenBy.sheets.getState()
    const layout = currentLayout(seen)
    const near = table === 'sheets' && layout && relaid(layout.answer, seen.derived.cutList, job, cutList.rows)
    if (!near) return ask(job)
    atPacker = { job, isPassing: true }
    packer.ask(job, near)
  }

  const follow: Turn = (state, isHandResting) => {
    if (!state.preview) return followAtRest(state)
    const next = asked && !isHandResting ? asked : state
    const job = next.derived.sheetJob
    const layout = answers.get(job) ?? passing.get(job)
    asked = layout ? null : next
    askUnderHand(next)
    if (!layout) return false
    seenBy.sheets.setState({ ...next, layout, packing: packingOf(layout) }, true)
    return next === state
  }

  function followAtRest(state: State): boolean {
    const before = seenBy.sheets.getState()
    asked = null
    seenBy.sheets.setState(state, true)
    const { sheetJob } = state.derived
    const isLost = state.layout === null && before.layout !== null
    if (sheetJob !== before.derived.sheetJob || isLost || state.layout?.isPassing) look(sheetJob)
    return true
  }

  function look(job: SheetJob) {
    const { layout, packing } = useStore.getState()
    const known = answers.get(job) ?? heldInSight(job, layout)
    if (known && !isWorse(known, layout)) show(known)
    // Whatever is set brings the sheets here again while a layout from under the hand is in sight.
    else if (!known && packing !== 'thinking') useStore.setState({ packing: 'thinking' })
    ask(job)
  }

  searching.setState({ stop, goOn })
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

/** A sheet that is kept or let go changes nothing at once: the layout in sight stays until the design has its own. */
function heldInSight(job: SheetJob, shown: Layout | null): Layout | null {
  if (!shown?.isSettled || !isSameButLocked(job, shown.job)) return null
  const answer = heldBy(job, shown.answer)
  return answer && { job, answer: standing(job)(answer), isSettled: false, isHeld: true }
}

/** A search that is still on may yet find what is in sight, from under the hand or from before a sheet was kept. */
function isWorse({ job, answer, isSettled }: Layout, shown: Layout | null): boolean {
  if (isSettled || shown?.job !== job) return false
  const more = sheetCount(answer) - sheetCount(shown.answer)
  return more > 0 || (more === 0 && shown.isHeld === true)
}

function packingOf({ isSettled }: Layout): State['packing'] {
  return isSettled ? 'idle' : 'thinking'
}
