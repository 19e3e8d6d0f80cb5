import { useMemo } from 'react'
import {
  atHandNow,
  type Breakdown,
  type BreakdownInput,
  breakdownOf,
  type Derived,
  type LengthDisplay,
  type LyingNow,
  type Mishap,
  measuredRows,
  oddsWords,
  type PartId,
  type Result,
  replanAfter,
  type SheetAnswer,
  type SheetJob,
  stepsNeeding,
} from '../../engine/index'
import { shelf } from './keeping'
import { type Cutting, currentLayout, type Layout, type State } from './state'
import { useStore } from './store'

/** Brings back what was being cut of a project whenever one is opened. */
export function connectCutting(): void {
  bringBack()
  useStore.subscribe((state, before) => {
    if (state.history.present.id !== before.history.present.id) bringBack()
    else if (state.history !== before.history) sayOdds(state, before)
  })
}

/** A design that parts from what is being cut, by an undo or an edit, is not left to do so silently. */
function sayOdds({ cutting, derived }: State, before: State): void {
  if (!cutting || cutting !== before.cutting) return
  const [was, is] = [before, { derived }].map((each) => oddsOf(cutting, each.derived))
  if (was!.length > 0 || is!.length === 0) return
  const words = `What is being cut stays as it was planned. ${is![0]}${canTakeBack(cutting) ? ' The last entry at the bench can be taken back there.' : ''}`
  // What is done to the design takes away the notice before it.
  queueMicrotask(() => useStore.getState().actions.say('know', words))
}

/** What is being cut, with its steps, its pieces and its fields in the unit of the project as it is now. */
export function useCutting(): Cutting | null {
  const cutting = useStore((state) => state.cutting)
  const display = useStore((state) => state.shown.display)
  // The steps are worked out again when their input changes, and not with every tick.
  const input = cutting?.input
  const spoken = useMemo(() => input && spokenIn(input, display), [input, display])
  return useMemo(() => cutting && spoken && { ...cutting, input: spoken }, [cutting, spoken]) ?? null
}

export function spokenIn(input: BreakdownInput, display: LengthDisplay): BreakdownInput {
  return { ...input, display }
}

/** Where the design differs now from what is being cut; nothing where it does not. */
export function oddsOf({ input }: Cutting, { cutList, project }: Derived): readonly string[] {
  return oddsWords(input, { rows: cutList.rows, materials: project.materials })
}

/** Whether the last entry of a mishap can be taken back: nothing is cut since. */
export function canTakeBack({ before, done }: Cutting): boolean {
  return before !== undefined && done.length === 0
}

function bringBack(): void {
  const { id } = useStore.getState().history.present
  shelf()
    .then((opened) => opened.getCutting(id))
    .then((cutting) => {
      const { history } = useStore.getState()
      if (!cutting || history.present.id !== id) return
      const kept = cutting as Cutting
      const isAtBench = kept.isAtBench === true
      // Whoever leaves the bench again stands where the cutting was begun.
      useStore.setState({ cutting: kept, isAtBench, ...(isAtBench ? { stage: 'cut' } : {}) })
    })
    .catch(tellNotKept)
}

/** Takes the layout of the present project to the saw: from now on the design may change and the steps do not. */
export function startCutting(): void {
  const state = useStore.getState()
  const layout = currentLayout(state)
  if (!layout?.isSettled || state.preview) return
  const input = inputOf(state.derived, layout.job, layout.answer)
  show({ project: state.history.present.id, input, done: [], cutBefore: [], told: [] })
  goToBench(true)
}

let known: { readonly derived: Derived; readonly answer: SheetAnswer; readonly breakdown: Breakdown } | null = null

/** The steps of a design, worked out once for every list that asks. */
export function breakdownFor(derived: Derived, { job, answer }: Layout): Breakdown {
  if (known?.derived !== derived || known.answer !== answer) {
    known = { derived, answer, breakdown: breakdownOf(inputOf(derived, job, answer)) }
  }
  return known.breakdown
}

/** All that the steps of a design are worked out from. */
export function inputOf({ project, cutList, partOf }: Derived, job: SheetJob, answer: SheetAnswer): BreakdownInput {
  const { shop, materials, display } = project
  const marks = new Map([...partOf].map(([id, { mark }]) => [id, mark]))
  return { job, answer, shop, cutList: { rows: cutList.rows }, marks, materials, display }
}

export function goToBench(isAtBench: boolean): void {
  useStore.setState({ isAtBench })
  const { cutting } = useStore.getState()
  if (cutting) show({ ...cutting, isAtBench })
}

/** Marks a step as done, or as not done after all, with those that need what it leaves. */
export function tick(step: string, isDone: boolean): void {
  const { cutting } = useStore.getState()
  if (!cutting) return
  const gone = new Set([step, ...(isDone ? [] : stepsNeeding(cutting.input, step))])
  const others = cutting.done.filter((id) => !gone.has(id))
  show({ ...cutting, done: isDone ? [...others, step] : others })
}

/** Forgets what was being cut. */
export function stopCutting(): void {
  const { id } = useStore.getState().history.present
  useStore.setState({ cutting: null, isAtBench: false })
  shelf()
    .then((opened) => opened.removeCutting(id))
    .catch(tellNotKept)
}

/** The sheets that were still to be bought lie in the shop now. */
export function sheetsHaveCome(): void {
  const { cutting } = useStore.getState()
  if (cutting) show({ ...cutting, input: { ...cutting.input, toBuy: new Set() } })
}

/** What would change if the rest was planned by what was measured; null where nothing would. */
export function measuredPlan({ input, done }: Cutting, { cutList }: Derived): Result<Measured | null> {
  const rows = measuredRows(input, cutList.rows)
  const mishap: Mishap = { kind: 'openings', rows }
  const plan = replanAfter(input, { done: new Set(done) }, mishap)
  if (!plan.ok) return plan
  const { happened: told, lost, resized } = plan.value
  const isChanged = lost.length + resized.length > 0
  return { ok: true, value: isChanged ? { mishap, told } : null }
}

export interface Measured {
  readonly mishap: Mishap
  /** In plain words: what changes. */
  readonly told: readonly string[]
}

/** How many steps are done, those of earlier plans counted, and how many there are with them. */
export function doneOf({ done, stepsBefore = 0, input }: Cutting): { readonly steps: number; readonly of: number } {
  return { steps: stepsBefore + done.length, of: stepsBefore + breakdownOf(input).steps.length }
}

/** The sheets and pieces that lie in the shop now and can be cut. */
export function handNow({ input, done }: Cutting): readonly LyingNow[] {
  const hand = atHandNow(input, { done: new Set(done) })
  return hand.ok ? hand.value : []
}

/** Marks of the parts that are cut, the last first, then those from before this plan, so that one of them can be called spoiled. */
export function partsCut({ input, done, cutBefore }: Cutting): { readonly part: PartId; readonly mark: string }[] {
  const isDone = new Set(done)
  const written = breakdownOf(input).steps.filter(({ id }) => isDone.has(id))
  const names = new Set(
    written.flatMap(({ leaves, write }) => (leaves.some(({ kind }) => kind === 'part') ? write : [])),
  )
  // A plan that an earlier version made again does not know the sizes of what was cut before.
  const before = new Set(input.cutBefore ? cutBefore : [])
  const turn = new Map([...names].map((mark, at) => [mark, at]))
  return [...input.marks]
    .flatMap(([part, mark]) => (names.has(mark) || before.has(part) ? [{ part, mark }] : []))
    .sort((a, b) => (turn.get(b.mark) ?? -1) - (turn.get(a.mark) ?? -1))
}

export function show(cutting: Cutting): void {
  useStore.setState({ cutting })
  shelf()
    .then((opened) => opened.putCutting(cutting.project, cutting))
    .catch(tellNotKept)
}

function tellNotKept(reason: unknown): void {
  const why = reason instanceof Error ? reason.message : String(reason)
  useStore.getState().actions.say('stop', `What is being cut could not be kept in this browser: ${why}`)
}
