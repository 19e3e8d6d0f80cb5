import { goOnAfter, type Mishap, type Progress, type Project, type Result, replanAfter } from '../../engine/index'
import { packOnce } from '../workers/once'
import type { Hand } from '../workers/packer'
import { canTakeBack, doneOf, show } from './cutting'
import type { Cutting, MaterialEdit } from './state'
import { useStore } from './store'

/** What an entry of a mishap would do: nothing of it is done yet. */
export interface Proposed {
  readonly from: Cutting
  readonly to: Cutting
  /** By which the design follows what was measured. */
  readonly edit: MaterialEdit | undefined
  /** What becomes of the parts, in a line. */
  readonly summary: string
  /** What would change, a sentence each. */
  readonly words: readonly string[]
}

/**
 * Plans again after a mishap, without taking the plan: what is cut stays, what is not cut yet stays as it was laid out
 * where it can, and what is missing is laid out on what is free and on sheets. Resolves with what is wrong where nothing
 * can be planned.
 */
export async function proposeAgain(
  from: Cutting,
  mishap: Mishap,
  hire: () => Hand,
  edit?: MaterialEdit,
): Promise<Result<Proposed>> {
  const progress: Progress = { done: new Set(from.done) }
  const plan = replanAfter(from.input, progress, mishap)
  if (!plan.ok) return plan
  const { cut, summary } = plan.value
  const going = await goOnAfter(from.input, plan.value, (job) => packOnce(job, hire).answer).catch((why) => {
    return `The rest could not be laid out: ${why}. Nothing is changed.`
  })
  if (typeof going === 'string') return { ok: false, message: going }
  const { before: _, ...kept } = from
  const to: Cutting = {
    ...kept,
    input: going.input,
    told: going.told,
    done: [],
    stepsBefore: doneOf(from).steps,
    cutBefore: from.input.cutBefore ? cut : [...new Set([...from.cutBefore, ...cut])],
  }
  return { ok: true, value: { from, to, edit, summary, words: going.told } }
}

/** The project as an entry has made it, so that taking it back at once is one undo. */
let made: Project | null = null

/** Takes a plan that was proposed; false where something was cut or planned since. */
export function takePlan({ from, to, edit }: Proposed): boolean {
  const { cutting, history, actions } = useStore.getState()
  if (!cutting || cutting.input.answer !== from.input.answer || cutting.done !== from.done) return false
  // Further back than one entry leads only what nothing was cut after.
  const { before, ...rest } = cutting
  const led = canTakeBack(cutting) && before ? { ...rest, before } : rest
  show({
    ...to,
    before: { cutting: led, ...(edit ? { edit: { made: edit, back: backOf(edit, history.present) } } : {}) },
  })
  if (edit) actions.commit(edit)
  made = useStore.getState().history.present
  return true
}

function backOf({ id, change }: MaterialEdit, { materials }: Project): MaterialEdit {
  const material = materials[id]!
  const was = Object.fromEntries(Object.keys(change).map((field) => [field, material[field as keyof typeof material]]))
  return { kind: 'editMaterial', id, change: was }
}

/** Takes the last entry of a mishap back: the plan, its ticks and the design are as before it. */
export function takeBack(): void {
  const { cutting, history, actions } = useStore.getState()
  if (!cutting?.before || !canTakeBack(cutting)) return
  const { cutting: before, edit } = cutting.before
  show(before)
  if (!edit) return
  if (history.present === made) actions.undo()
  else if (stands(edit.made, history.present)) actions.commit(edit.back)
}

/** Whether the design still has what the entry gave it. */
function stands({ id, change }: MaterialEdit, { materials }: Project): boolean {
  const material = materials[id]
  return (
    material !== undefined &&
    Object.entries(change).every(([field, value]) => material[field as keyof typeof material] === value)
  )
}
