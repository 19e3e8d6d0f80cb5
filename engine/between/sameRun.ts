import type { RunId } from '../basics/id'
import type { BuiltRun, Place } from './run'

const lastOf = new Map<RunId, BuiltRun>()
const MOST_KEPT = 500

/** The run as it was before, the same object, where nothing of it is different: what draws it need not look again. */
export function sameRun(run: BuiltRun): BuiltRun {
  const before = lastOf.get(run.id)
  if (before && isSame(before, run)) return before
  if (lastOf.size >= MOST_KEPT) lastOf.clear()
  lastOf.set(run.id, run)
  return run
}

function isSame(a: BuiltRun, b: BuiltRun): boolean {
  const fields = Object.keys(b.place) as (keyof Place)[]
  return (
    a.mark === b.mark &&
    a.kind === b.kind &&
    a.isOwn === b.isOwn &&
    a.parts === b.parts &&
    a.problems === b.problems &&
    a.cabinets.length === b.cabinets.length &&
    a.cabinets.every((id, at) => id === b.cabinets[at]) &&
    fields.every((field) => a.place[field] === b.place[field])
  )
}
