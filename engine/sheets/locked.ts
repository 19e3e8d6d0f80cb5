import type { SheetJob } from './job'

/** What is still to be packed: the job without its excluded sheets, and without the parts and sheets that are locked. */
export function withoutLocked(job: SheetJob): SheetJob {
  const there = job.stock.filter(({ excluded }) => !excluded)
  const locked = job.locked ?? []
  if (locked.length === 0) return { ...job, stock: there }
  const parts = new Map<string, number>()
  const sheets = new Map<string, number>()
  const add = (counts: Map<string, number>, id: string, more: number) => counts.set(id, (counts.get(id) ?? 0) + more)
  for (const { stock, copies, placements } of locked) {
    add(sheets, stock, copies)
    for (const { part } of placements) add(parts, part, copies)
  }
  return {
    ...job,
    parts: job.parts.map((part) => ({ ...part, quantity: part.quantity - (parts.get(part.id) ?? 0) })),
    stock: there.map((stock) =>
      stock.quantity === undefined ? stock : { ...stock, quantity: stock.quantity - (sheets.get(stock.id) ?? 0) },
    ),
  }
}

/** How many sheets of a material are locked. */
export function lockedCount({ stock, locked = [] }: SheetJob, material: string): number {
  const own = new Set(stock.filter((sheet) => sheet.material === material).map(({ id }) => id))
  return locked.reduce((sum, sheet) => sum + (own.has(sheet.stock) ? sheet.copies : 0), 0)
}
