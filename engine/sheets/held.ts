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

/**
 * Gives every locked sheet the number that it had, as far as the sheets of its own material go: the answer lists its
 * sheets by material, and within one the locked sheets stand where as many sheets come before them as came then.
 */
export function standing(job: SheetJob): (answer: SheetAnswer) => SheetAnswer {
  const { locked = [], lockedAt } = job
  if (!lockedAt || locked.length === 0) return (answer) => answer
  const materialOf = new Map(job.stock.map(({ id, material }) => [id, material]))
  const materials = [...new Set(job.parts.map(({ material }) => material))]
  return (answer) => {
    const free = answer.sheets.slice(locked.length)
    const sheets: SheetLayout[] = []
    let count = 0
    const put = (sheet: SheetLayout) => {
      sheets.push(sheet)
      count += sheet.copies
    }
    for (const material of materials) {
      const isOwn = ({ stock }: SheetLayout) => materialOf.get(stock) === material
      const held = locked.flatMap((sheet, at) => (isOwn(sheet) ? [{ sheet, at: lockedAt[at]! }] : []))
      held.sort((a, b) => a.at - b.at)
      for (const sheet of free.filter(isOwn)) {
        while (held.length > 0 && held[0]!.at <= count) put(held.shift()!.sheet)
        put(sheet)
      }
      for (const { sheet } of held) put(sheet)
    }
    return { ...answer, sheets }
  }
}
