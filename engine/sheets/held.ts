import type { SheetJob } from './job'
import { layoutKey, type SheetAnswer, type SheetLayout } from './layout'

/** For each locked sheet of a job, which sheet of the answer it is; -1 where the answer does not have it. */
export function lockedIn({ locked = [] }: SheetJob, { sheets }: SheetAnswer): number[] {
  const keys = sheets.map(nameOf)
  const taken = new Set<number>()
  return locked.map((sheet) => {
    const name = nameOf(sheet)
    const at = keys.findIndex((key, place) => key === name && !taken.has(place))
    taken.add(at)
    return at
  })
}

function nameOf(sheet: SheetLayout): string {
  return `${sheet.copies} ${layoutKey(sheet)}`
}

/**
 * An answer to a job, or to the same with other sheets locked, as an answer to this job: its own locked sheets come
 * first. Null where they are not among its sheets as they are, or where it leaves parts out.
 */
export function heldBy(job: SheetJob, answer: SheetAnswer): SheetAnswer | null {
  const places = lockedIn(job, answer)
  if (answer.unplaced.length > 0 || places.includes(-1)) return null
  const others = answer.sheets.filter((_, at) => !places.includes(at))
  const { provedWithLocked: _, ...own } = answer
  // What was said of other locked sheets is not said of these.
  const withLocked = job.locked?.length ? { provedWithLocked: answer.proved } : {}
  return { ...own, ...withLocked, sheets: [...(job.locked ?? []), ...others] }
}

/** Whether two jobs ask for the same, whatever sheets are locked in them. */
export function isSameButLocked(a: SheetJob, b: SheetJob): boolean {
  return JSON.stringify(unlocked(a)) === JSON.stringify(unlocked(b))
}

export function unlocked({ locked: _, lockedAt: __, ...job }: SheetJob): SheetJob {
  return job
}
