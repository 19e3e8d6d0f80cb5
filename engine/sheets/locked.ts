import { unlocked } from './held'
import type { SheetJob } from './job'
import { type StockKind, stockKind } from './lot'
import { lockedSheets, pinKey } from './pinned'

/**
 * What is still to be packed: the job without its excluded sheets, and without the parts and sheets that are locked. Parts
 * that ask for a sheet which is locked, and are not on it, are not asked for: nothing can be put on it.
 */
export function withoutLocked(job: SheetJob): SheetJob {
  const there = job.stock.filter(({ excluded }) => !excluded)
  const locked = job.locked ?? []
  if (locked.length === 0) return { ...job, stock: there }
  const shut = lockedSheets(job)
  const parts = new Map<string, number>()
  const sheets = new Map<string, number>()
  const add = (counts: Map<string, number>, id: string, more: number) => counts.set(id, (counts.get(id) ?? 0) + more)
  for (const { stock, copies, placements } of locked) {
    add(sheets, stock, copies)
    for (const { part } of placements) add(parts, part, copies)
  }
  return {
    ...job,
    parts: job.parts.map((part) => {
      const isShut = part.sheet !== undefined && shut.has(pinKey(part))
      return { ...part, quantity: isShut ? 0 : part.quantity - (parts.get(part.id) ?? 0) }
    }),
    stock: there.map((stock) =>
      stock.quantity === undefined ? stock : { ...stock, quantity: stock.quantity - (sheets.get(stock.id) ?? 0) },
    ),
  }
}

/**
 * What any layout may take for all the parts, as if nothing was locked: of an excluded kind no more sheets than are
 * locked. A bound for it holds whatever sheets are kept.
 */
export function asIfFree(job: SheetJob): SheetJob {
  const { stock, ...rest } = unlocked(job)
  const held = new Map<string, number>()
  for (const sheet of job.locked ?? []) held.set(sheet.stock, (held.get(sheet.stock) ?? 0) + sheet.copies)
  return {
    ...rest,
    stock: stock.flatMap(({ excluded, ...one }) => {
      const count = held.get(one.id) ?? 0
      if (excluded) return count > 0 ? [{ ...one, quantity: count }] : []
      return [one]
    }),
  }
}

/** The locked sheets of a material, copies counted out, each as its kind of stock. */
export function lockedOf(job: SheetJob, material: string): StockKind[] {
  const { stock, locked = [] } = job
  const own = new Map(stock.filter((sheet) => sheet.material === material).map((one) => [one.id, one]))
  return locked.flatMap(({ stock: id, copies }) => {
    const one = own.get(id)
    return one ? Array.from({ length: copies }, () => stockKind(one, job)) : []
  })
}
