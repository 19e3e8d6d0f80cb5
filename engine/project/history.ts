import { applyEdit } from './apply'
import type { Project } from './document'
import type { Edit } from './edit'
import { labelOf } from './label'

/** The documents that were, the one that is, and the ones that were undone. Documents share what did not change. */
export interface History {
  /** Oldest first: each with the label of the step that was then made from it. */
  readonly past: readonly Remembered[]
  readonly present: Project
  /** Next first: each with the label of the step that leads to it. */
  readonly future: readonly Remembered[]
}

export interface Remembered {
  readonly label: string
  readonly project: Project
}

/** So many steps can be undone. */
const STEPS_KEPT = 1000

export function begin(present: Project): History {
  return { past: [], present, future: [] }
}

/** One named step. An edit that changes nothing makes none. */
export function make(history: History, edit: Edit, label: string = labelOf(history.present, edit)): History {
  const present = applyEdit(history.present, edit)
  if (present === history.present) return history
  return { past: [...history.past, { label, project: history.present }].slice(-STEPS_KEPT), present, future: [] }
}

export function undo(history: History): History {
  const last = history.past.at(-1)
  if (!last) return history
  const future = [{ label: last.label, project: history.present }, ...history.future]
  return { past: history.past.slice(0, -1), present: last.project, future }
}

export function redo(history: History): History {
  const [next, ...future] = history.future
  if (!next) return history
  return { past: [...history.past, { label: next.label, project: history.present }], present: next.project, future }
}

export function undoLabel({ past }: History): string | null {
  return past.at(-1)?.label ?? null
}

export function redoLabel({ future }: History): string | null {
  return future[0]?.label ?? null
}
