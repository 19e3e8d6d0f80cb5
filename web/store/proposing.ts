import { applyEdit, type Derived, derive, type Edit, effectOf, effectWords, type Project } from '../../engine/index'
import type { State } from './state'
import { useStore } from './store'

/** A change of how things are built. */
export type MethodEdit = Extract<Edit, { readonly kind: 'editMethod' | 'useMethod' }>

/** A change of how cabinets are built that is shown and waits for a yes. */
export interface Proposal {
  readonly edits: readonly MethodEdit[]
  /** Which cabinets it changes, and how many of their parts. */
  readonly words: string
}

/**
 * Makes a change of how things are built at once while no board of the project changes by it. Where boards change it is
 * shown first, and the changes that follow join it: all together are one step of undo.
 */
export function propose(edit: MethodEdit): void {
  const { history, preview, actions, isElsewhere } = useStore.getState()
  const project = history.present
  const edits = joined(editsIn(preview), edit)
  const all: Edit = { kind: 'several', edits }
  if (applyEdit(project, all) === project) actions.preview(null)
  else if (isElsewhere || wordsOf(project, all) === '') actions.commit(all)
  else actions.preview(all)
}

export function applyProposal(): void {
  const { preview, actions } = useStore.getState()
  if (preview && editsIn(preview).length > 0) actions.commit(preview)
}

export function leaveProposal(): void {
  const { preview, actions } = useStore.getState()
  if (editsIn(preview).length > 0) actions.preview(null)
}

let last: { readonly preview: Edit; readonly project: Project; readonly proposal: Proposal | null } | null = null

/** The change that waits for a yes; null when there is none. The same object while it stays the same. */
export function proposalOf({ preview, history }: Pick<State, 'preview' | 'history'>): Proposal | null {
  if (!preview) return null
  if (last?.preview === preview && last.project === history.present) return last.proposal
  const edits = editsIn(preview)
  const proposal = edits.length > 0 ? { edits, words: wordsOf(history.present, preview) } : null
  last = { preview, project: history.present, proposal }
  return proposal
}

/** What is shown may also be a drag: then nothing waits. */
function editsIn(preview: Edit | null): readonly MethodEdit[] {
  if (preview?.kind !== 'several') return []
  const { edits } = preview
  return edits.every(isMethodEdit) ? edits : []
}

function isMethodEdit(edit: Edit): edit is MethodEdit {
  return edit.kind === 'editMethod' || edit.kind === 'useMethod'
}

/** A second change of one method is merged into the first; the last word on the project's method holds. */
function joined(edits: readonly MethodEdit[], edit: MethodEdit): readonly MethodEdit[] {
  const at = edits.findIndex((one) => one.kind === edit.kind && (one.kind === 'useMethod' || one.id === edit.id))
  const before = edits[at]
  if (!before) return [...edits, edit]
  const merged: MethodEdit =
    before.kind === 'editMethod' && edit.kind === 'editMethod'
      ? { ...before, change: { ...before.change, ...edit.change } }
      : edit
  return edits.with(at, merged)
}

function wordsOf(project: Project, edit: Edit): string {
  return effectWords(effectOf(boardsIn(derive(project)), boardsIn(derive(applyEdit(project, edit)))))
}

/** The boards of cabinets and of what goes over several of them. */
function boardsIn({ cabinets, runs }: Derived) {
  return [...cabinets, ...runs.map((run) => ({ ...run, cabinet: { id: run.id } }))]
}
